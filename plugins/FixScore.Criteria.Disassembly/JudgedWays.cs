using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Disassembly;

/// <summary>The way to a part that a profile wants judged, or the ways it can be.</summary>
/// <param name="Route">The shortest route.</param>
/// <param name="Sequences">Recorded sequences that are judged in its place: the shortest, and those that are shorter if unknown tools are few.</param>
sealed record JudgedWays(Route Route, ImmutableArray<RecordedWay> Sequences)
{
    public ImmutableArray<Way> All => Sequences.IsEmpty ? [.. Route.Ways] : [.. Sequences.Select(each => each.Way)];

    /// <summary>Whether the judged way may be undercut by one that was not found.</summary>
    public bool IsProven => Route.IsOptimal || !Sequences.IsEmpty;

    /// <summary>Length in the unit that the route was to be shortest in: steps or operations.</summary>
    public Interval Length
    {
        get
        {
            Interval[] lengths = [.. All.Select(LengthOf)];
            var low = lengths.Min(each => each.Low);
            return Sequences.IsEmpty
                ? new(IsProven ? low : Math.Min(low, Route.LowerBound ?? low), lengths.Max(each => each.High))
                : new(low, lengths.Min(each => each.High));
        }
    }

    public static JudgedWays Of(PartContext context, RouteCost cost = RouteCost.Steps)
    {
        var route = context.Case.RouteTo(context.Part.Id, cost, context.Get(WayOptions.FirstTool));
        var all = new JudgedWays(route, []);
        if (Author(context.Get(WayOptions.Route)) is not { } author || route.Reachability != Reachability.Reachable) return all;
        RecordedWay[] recorded = [.. route.Recorded.Where(each => each.Sequence.By == author)];
        if (recorded.MinBy(each => all.LengthOf(each.Way).High) is not { } shortest) return all;
        var least = all.LengthOf(shortest.Way).High;
        return all with { Sequences = [shortest, .. recorded.Where(each => each != shortest && all.LengthOf(each.Way).Low < least)] };
    }

    /// <summary>Who recorded the wanted way; <c>null</c> for the shortest.</summary>
    public static SequenceAuthor? Author(JudgedRoute wanted) => wanted switch
    {
        JudgedRoute.Maker => SequenceAuthor.Maker,
        JudgedRoute.Assessor => SequenceAuthor.Assessor,
        _ => null,
    };

    public Interval LengthOf(Way way) => Route.Query.Cost == RouteCost.Operations ? way.Stops.Length : way.Steps;
}
