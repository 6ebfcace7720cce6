using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Reporting.Sheet;

/// <summary>What of a record the work touches, with the hazards that go with it. Common practice, no source.</summary>
static class SheetHazards
{
    static readonly ImmutableArray<string> Glass = [Roles.DisplayAssembly, "cover-glass", "camera-window"];
    static readonly ImmutableArray<string> Static = [Roles.Mainboard, "daughterboard"];

    /// <summary>The record without what the work leaves alone; a battery is a hazard to whoever opens the device for another part, too.</summary>
    public static TeardownRecord Touched(TeardownRecord record, ImmutableArray<SheetOperation> operations, ImmutableArray<string> freed)
    {
        var undone = operations.SelectMany(each => each.Stop.Undone).ToHashSet(StringComparer.Ordinal);
        var parts = operations.SelectMany(each => each.Stop.Taken).Concat(freed)
            .Concat(record.Joints.Where(joint => undone.Contains(joint.Id)).SelectMany(joint => joint.Joins)).ToHashSet(StringComparer.Ordinal);
        return record with
        {
            Parts = [.. record.Parts.Where(part => part.Role == Roles.Battery || parts.Contains(part.Id)).Select(WithRole)],
            Operations = [.. operations.Select(each => WithTools(record, each))],
        };
    }

    // A recorded list of hazards is the assessor's word; where there is none, the role speaks.
    public static Part WithRole(Part part) => part.Hazards.IsRecorded ? part
        : Glass.Contains(part.Role) ? part with { Hazards = [Hazard.Glass] }
        : Static.Contains(part.Role) ? part with { Hazards = [Hazard.StaticSensitive] }
        : part;

    static Operation WithTools(TeardownRecord record, SheetOperation each)
    {
        var tools = record.Tools.Where(tool => each.Stop.Tools.Contains(tool.Id)).ToArray();
        IEnumerable<Hazard> hazards = each.Stop.Operation.Hazards;
        if (tools.Any(tool => tool.Solvent is not null)) hazards = hazards.Append(Hazard.FlammableSolvent);
        if (tools.Any(tool => tool.HeatC is not null)) hazards = hazards.Append(Hazard.HotSurface);
        return each.Stop.Operation with { Hazards = [.. hazards.Distinct()] };
    }
}
