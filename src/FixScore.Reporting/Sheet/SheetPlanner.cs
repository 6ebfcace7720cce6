using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Reporting.Sheet;

/// <summary>Finds the way to several parts and gathers what belongs to it.</summary>
sealed class SheetPlanner
{
    const int WaitsShown = 3;

    // A sheet for many parts is read at the bench: a good way soon is worth more than the proof of the best.
    const int EffortForMany = 4_000;

    readonly TeardownCase source;
    readonly ImmutableArray<Part> asked;
    readonly ImmutableArray<string> freed;
    readonly ImmutableArray<SheetOperation> operations;
    readonly bool isShortest;

    public SheetPlanner(TeardownCase source, ImmutableArray<Part> asked)
    {
        (this.source, this.asked) = (source, asked);
        freed = Freed([.. asked.Select(part => part.Id).Where(id => source.RouteTo(id, RouteCost.Operations).Reachability == Reachability.Reachable)]);
        var way = freed.IsEmpty ? null : Shortest(freed);
        (operations, isShortest) = way is null ? ([], true) : (Numbered(way.Way!.Stops), way.IsOptimal);
    }

    TeardownRecord Record => source.Record;

    public SheetPlan Plan()
    {
        var (screws, moved) = (SheetScrews.Of(operations, Joints), Moved());
        return new()
        {
            Record = Record, IsShortest = isShortest, Parts = [.. asked.Select(Listed)], Cautions = [.. SafetyText.For([SheetHazards.Touched(Record, operations, freed)])],
            Ready = Stock(screws), Before = SheetChecks.Before(moved), Labels = Labels(), Operations = operations, Screws = screws,
            Reassembly = [.. operations.Reverse().Where(IsUndone).Select(each => new SheetReturn(each.Number, each.Stop, [.. Joints(each).Select(Renewal).OfType<SheetRenewal>()]))],
            AlsoRecorded = [.. Record.Operations.Where(operation => operation.Phase == OperationPhase.Reassembly)],
            Sealing = new(Record.Device.IngressProtection, [.. operations.SelectMany(Joints).Where(joint => joint.Kind is JointKind.Gasket or JointKind.Adhesive or JointKind.Tape)]),
            After = SheetChecks.After(moved),
        };
    }

    Part[] Moved()
    {
        var ids = operations.SelectMany(each => each.Stop.Taken).Concat(freed).Concat(asked.Select(part => part.Id)).ToHashSet(StringComparer.Ordinal);
        return [.. Record.Parts.Where(part => ids.Contains(part.Id))];
    }

    // What is free alone need not be free along with the rest: then each part is taken that fits those before it.
    ImmutableArray<string> Freed(ImmutableArray<string> alone) =>
        alone.IsEmpty || IsReachable(alone) ? alone
            : alone.Aggregate(ImmutableArray<string>.Empty, (kept, next) => IsReachable(kept.Add(next)) ? kept.Add(next) : kept);

    bool IsReachable(ImmutableArray<string> parts) => source.RouteToAll(parts, RouteCost.Operations).Reachability == Reachability.Reachable;

    // Where the effort does not lead to a way at all, the one of fewest operations serves.
    Route Shortest(ImmutableArray<string> parts)
    {
        var effort = parts.Length == 1 ? RouteQuery.UsualEffort : EffortForMany;
        return source.Derive<Route, RouteQuery>(new(parts, Effort: effort)) is { Reachability: Reachability.Reachable } route ? route : source.RouteToAll(parts, RouteCost.Operations);
    }

    static ImmutableArray<SheetOperation> Numbered(ImmutableArray<Stop> stops) =>
        [.. stops.Select((stop, index) => new SheetOperation(index + 1, stop, index > 0 && stop.Operation.DirectlyAfter == stops[index - 1].Operation.Id))];

    SheetPart Listed(Part part)
    {
        var route = source.RouteTo(part.Id, RouteCost.Operations);
        return new(part, route.Reachability, route.Why, freed.Contains(part.Id));
    }

    IEnumerable<Joint> Joints(SheetOperation each) => Record.Joints.Where(joint => each.Stop.Undone.Contains(joint.Id));

    static bool IsUndone(SheetOperation each) => each.Stop.Undone.Length + each.Stop.Taken.Length > 0;

    SheetStock Stock(ImmutableArray<SheetScrew> screws)
    {
        var uses = operations.SelectMany(each => each.Stop.Operation.Consumes).CountBy(id => id, StringComparer.Ordinal).ToArray();
        var later = Record.Operations.Where(operation => operation.Phase == OperationPhase.Reassembly).SelectMany(operation => operation.Consumes).ToArray();
        var tools = operations.SelectMany(each => each.Stop.Tools.AsArray()).Distinct(StringComparer.Ordinal);
        return new([.. tools.Select(id => Record.Tools.First(tool => tool.Id == id))], operations.All(each => each.Stop.Tools.IsRecorded), SheetScrews.Bits(screws),
            [.. uses.Select(use => new SheetUse(Record.Consumables.First(consumable => consumable.Id == use.Key), use.Value))],
            [.. Record.Consumables.Where(consumable => later.Contains(consumable.Id))],
            [.. operations.SelectMany(Joints).DistinctBy(joint => joint.Id).Select(Renewal).OfType<SheetRenewal>()],
            [.. operations.Where(each => each.Stop.Operation.WaitSeconds?.Max > 0).OrderByDescending(each => each.Stop.Operation.WaitSeconds!.Value.Max).Take(WaitsShown)]);
    }

    // Seen from the parts of the sheet that the joint holds; from all of them where it holds none.
    SheetRenewal? Renewal(Joint joint)
    {
        var held = freed.Where(joint.Joins.Contains).DefaultIfEmpty().ToArray() is [not null, ..] own ? own.OfType<string>() : freed;
        ImmutableArray<FastenerLevel> levels = [.. held.SelectMany(part => FastenerLevels.Of(source, part, joint).Possible()).Distinct().Order()];
        return levels is [FastenerLevel.Reusable] ? null : new(joint, levels);
    }

    // 'unit-a' is marked A.
    static string Mark(string unit) => (unit.StartsWith("unit-", StringComparison.Ordinal) ? unit[5..] : unit).ToUpperInvariant();

    ImmutableArray<SheetLabel> Labels()
    {
        var loose = operations.SelectMany(each => each.Stop.Taken).Concat(freed).ToHashSet(StringComparer.Ordinal);
        return [.. from part in Record.Parts where loose.Contains(part.Id)
                   from unit in Record.Assessment.Units
                   select new SheetLabel(unit.Id, part.Id, $"{Mark(unit.Id)}-{part.Id}")];
    }
}
