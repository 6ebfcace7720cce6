using System.Collections.Frozen;
using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Comparison;

/// <summary>What the units of a record are, and of which model code.</summary>
sealed class UnitKinds
{
    public const string Device = "device";
    public const string Unknown = "unknown";

    readonly FrozenDictionary<string, AssessedUnit> units;
    readonly FrozenSet<string> hosts;

    public UnitKinds(TeardownRecord record)
    {
        units = record.Assessment.Units.ToFrozenDictionary(unit => unit.Id, StringComparer.Ordinal);
        hosts = record.Swaps.Select(trial => trial.Host).ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>What a unit is, in words; only a device can be a host.</summary>
    public string KindOf(string unit)
    {
        if (hosts.Contains(unit)) return Device;
        var source = units.GetValueOrDefault(unit)?.Source ?? default;
        return source.IsUnknown ? Unknown : string.Join(" or ", source.Stated.Order().Select(Word.Of));
    }

    /// <summary>The model codes of all units of some trials, each once, in the order in which they come up.</summary>
    public ImmutableArray<string> ModelCodesOf(IEnumerable<SwapTrial> trials) =>
    [
        .. trials.SelectMany(trial => trial.Installed.Select(part => part.Unit).Prepend(trial.Host)).Distinct(StringComparer.Ordinal)
            .Select(unit => units.GetValueOrDefault(unit)?.ModelCode).OfType<string>().Distinct(StringComparer.Ordinal),
    ];
}
