using System.Globalization;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Cli.Commands.Routing;

/// <summary>What must be at hand, beside the part itself, to put together again what a way took apart.</summary>
sealed class ReassemblyText(RouteToPart found, Way way)
{
    readonly TeardownRecord record = found.Case.Record;
    readonly Names names = new(found.Case.Record);

    public IEnumerable<string> Lines =>
        record.Joints.Where(joint => way.Joints.Contains(joint.Id)).Select(Fastener).OfType<string>().Concat(Consumables());

    string? Fastener(Joint joint)
    {
        var levels = FastenerLevels.Of(found.Case, found.Part.Id, joint).Possible();
        if (levels is [FastenerLevel.Reusable]) return null;
        return $"{Names.Joint(joint)}: {(joint.Reuse.IsUnknown ? "not recorded whether it can be used again" : string.Join(", or ", levels.Select(Says)))}";
    }

    static string Says(FastenerLevel level) => level switch
    {
        FastenerLevel.Reusable => "can be used again",
        FastenerLevel.Resupplied => "a new one comes with the spare part",
        FastenerLevel.Removable => "a new one has to be bought",
        _ => "cannot be restored as it was",
    };

    IEnumerable<string> Consumables()
    {
        foreach (var (id, uses) in way.Consumes.CountBy(id => id, StringComparer.Ordinal))
            yield return string.Create(CultureInfo.InvariantCulture, $"{names.Consumable(id)}: used up on the way{(uses > 1 ? $", {uses} times" : "")}");
        // A record does not say which joint an operation of reassembly renews.
        var later = record.Operations.Where(operation => operation.Phase == OperationPhase.Reassembly).SelectMany(operation => operation.Consumes).Distinct(StringComparer.Ordinal).ToArray();
        if (later.Length > 0) yield return $"for reassembly of the whole device the record names: {string.Join(", ", later.Select(names.Consumable))}";
    }
}
