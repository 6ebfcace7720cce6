using System.Collections.Immutable;
using FixScore.Pairing.Inference;
using FixScore.Records;

namespace FixScore.Pairing.Comparison;

/// <summary>Reads what trials saw, function by function; controls and faults of a host are left out.</summary>
sealed class ObservationReader(TeardownRecord record, ForeignParts foreign, UnitKinds units)
{
    public ImmutableArray<Observation> Read()
    {
        var trials = record.Swaps.Select(trial => (Trial: trial, Foreign: foreign.WithUnits(trial))).ToImmutableArray();
        var faults = trials.Where(each => each.Foreign.IsEmpty).SelectMany(each => FlagsOf(each.Trial)).ToHashSet();
        return [.. trials.Where(each => !each.Foreign.IsEmpty).SelectMany(each => Of(each.Trial, SwapOf(each.Trial, each.Foreign), faults))];
    }

    static IEnumerable<(SwapContext, string, string)> FlagsOf(SwapTrial control) =>
        control.Checks.Where(CheckReading.IsFlag).Select(check => (SwapContext.Of(control), control.Host, check.Function));

    static IEnumerable<Observation> Of(SwapTrial trial, Swap swap, HashSet<(SwapContext, string, string)> faults)
    {
        var context = SwapContext.Of(trial);
        return
            from check in trial.Checks
            where check.Works() || check.IsFlag() && !faults.Contains((context, trial.Host, check.Function))
            group check by check.Function into checks
            select new Observation(trial, context, swap, checks.Key, CheckReading.WorstOf(checks).Stated);
    }

    Swap SwapOf(SwapTrial trial, ImmutableArray<InstalledPart> parts)
    {
        var reference = foreign.ReferenceOf(trial);
        string[] kinds = [.. parts.Select(each => each.Unit == reference ? UnitKinds.Device : units.KindOf(each.Unit))];
        var alike = kinds.Distinct(StringComparer.Ordinal).Count() == 1;
        return new([.. parts.Select(each => each.Part)], alike ? kinds[0] : string.Join(", ", parts.Zip(kinds, (part, kind) => $"{part.Part} {kind}")));
    }
}
