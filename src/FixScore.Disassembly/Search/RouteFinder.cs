using System.Collections.Immutable;
using FixScore.Disassembly.Model;
using FixScore.Records;

namespace FixScore.Disassembly.Search;

/// <summary>Answers a route query: what is known of the parts, the search without damage, the search with least damage.</summary>
sealed class RouteFinder
{
    readonly TeardownCase source;
    readonly RouteQuery query;
    readonly CancellationToken cancellation;
    readonly Teardown teardown;
    readonly int[] groups;
    readonly Need goal;

    RouteFinder(TeardownCase source, RouteQuery query, CancellationToken cancellation)
    {
        if (query.Parts.IsEmpty) throw new ArgumentException("A route needs a part to free.", nameof(query));
        (this.source, this.query, this.cancellation, teardown) = (source, query, cancellation, source.Derive<Teardown>());
        groups = [.. query.Parts.Select(part => teardown.Structure.GroupOf(part)).Distinct().Order()];
        goal = groups is [var only] ? teardown.Freed(only) : teardown.Freed(groups);
    }

    public static Route Find(TeardownCase source, RouteQuery query, CancellationToken cancellation) => new RouteFinder(source, query, cancellation).Find();

    Route Find()
    {
        if (Gaps.Of(source, teardown, groups) is { } gap) return Told(gap.Reachability, gap.Why);
        return Undamaged() ?? LeastDamage();
    }

    Route? Undamaged() => Plan(Harms) is not { } plan ? null : query.Cost switch
    {
        RouteCost.Steps => BySteps(plan),
        RouteCost.Seconds => BySeconds() ?? ByOperations(plan),
        _ => ByOperations(plan),
    };

    Plan? Plan(Func<int, bool> barred) => Search.Plan.For(teardown, goal, teardown.Possible(barred), query.Cost == RouteCost.Steps);

    Route? BySteps(Plan plan)
    {
        var most = Steps(plan, UnknownTools.OwnTool);
        var least = HasUnknownTools(plan) ? Steps(plan, UnknownTools.BareHands) : most;
        return Reached(most, least, bound => (decimal)bound, (way, leastWay) => new(leastWay.Steps.Low, way.Steps.High));
    }

    static bool HasUnknownTools(Plan plan) => plan.Works.Any(work => work.Options.Any(option => !option.Tools.IsRecorded));

    Shortest Steps(Plan plan, UnknownTools unknown) => Solve(plan, landmarks => new StepPrice(plan.Works, landmarks, query.FirstTool, unknown));

    Route? ByOperations(Plan plan)
    {
        var found = Solve(plan, landmarks => new SumPrice([.. plan.Works.Select(_ => Int128.One)], landmarks));
        return Reached(found, found, query.Cost == RouteCost.Operations ? bound => (decimal)bound : null, (way, _) => way.Steps);
    }

    Route? BySeconds()
    {
        if (Plan(work => Harms(work) || IsUntimed(work)) is not { } timed) return null;
        var found = Solve(timed, landmarks => new SumPrice([.. timed.Works.Select(Middle.Of)], landmarks));
        return Reached(found, found, Middle.Seconds, (way, _) => way.Steps);
    }

    Shortest Solve(Plan plan, Func<Landmarks, Price> pricing) => Shortest.Of(plan, pricing, _ => Harm.None(plan), query.Effort, cancellation);

    Route? Reached(Shortest found, Shortest least, Func<Int128, decimal>? bound, Func<Way, Way, Interval> steps)
    {
        if ((found.Works ?? least.Works) is not { } works) return found.IsProven ? null : Told(Reachability.Unknown, RouteReasons.TooMuch(source, query));
        var (way, leastWay) = Sorted(Way(works), works, least);
        return new(query, Reachability.Reachable)
        {
            Way = way,
            LeastWay = leastWay,
            Steps = steps(way, leastWay),
            IsOptimal = found.IsProven && least.IsProven,
            LowerBound = bound?.Invoke(least.Bound),
            Damages = Harmed(way),
            AtRisk = AtRisk(way),
            Recorded = Recorded(),
        };
    }

    Route LeastDamage()
    {
        if (Plan(_ => false) is not { } plan) return Nothing();
        var found = query.Cost == RouteCost.Seconds ? FastestOfLeastDamage(plan) : LeastDamage(plan, landmarks => Pricing(plan, landmarks));
        var least = query.Cost == RouteCost.Steps && HasUnknownTools(plan) ? LeastDamage(plan, landmarks => Pricing(plan, landmarks, UnknownTools.BareHands)) : found;
        if (found.Works is null) return found.IsProven ? Nothing() : Told(Reachability.Unreachable, RouteReasons.DamageOpen(source, query));
        var way = Way(found.Works);
        return new(query, Reachability.Unreachable)
        {
            Way = way,
            LeastWay = Other(way, found.Works, least),
            Why = RouteReasons.OnlyDamage(source, query, Harmed(way)),
            IsOptimal = found.IsProven, Damages = Harmed(way), AtRisk = AtRisk(way), Recorded = Recorded(),
        };
    }

    // A search cut short can find a worse way than the other one came upon.
    (Way Way, Way LeastWay) Sorted(Way way, int[] works, Shortest least)
    {
        var other = Other(way, works, least);
        return (other.Steps.High < way.Steps.High ? other : way, way.Steps.Low < other.Steps.Low ? way : other);
    }

    // The same way is the same object, so that it is told once.
    Way Other(Way way, int[] works, Shortest least) => least.Works is null || least.Works.SequenceEqual(works) ? way : Way(least.Works);

    // Time counts only where it is known of all, and only after damage.
    Shortest FastestOfLeastDamage(Plan plan)
    {
        var any = LeastDamage(plan, landmarks => Pricing(plan, landmarks));
        if (Plan(IsUntimed) is not { } timed || any.Works is null) return any;
        var fastest = LeastDamage(timed, landmarks => new SumPrice([.. timed.Works.Select(Middle.Of)], landmarks));
        return fastest.Works is not null && Weight(fastest.Works) == Weight(any.Works) ? fastest : any;
    }

    Shortest LeastDamage(Plan plan, Func<Landmarks, Price> pricing) =>
        Shortest.Of(plan, pricing, price => Harm.Of(plan, price, teardown.Structure), query.Effort, cancellation);

    Price Pricing(Plan plan, Landmarks landmarks, UnknownTools unknown = UnknownTools.OwnTool) => query.Cost == RouteCost.Steps
        ? new StepPrice(plan.Works, landmarks, query.FirstTool, unknown)
        : new SumPrice([.. plan.Works.Select(_ => Int128.One)], landmarks);

    (int Parts, int Joints) Weight(int[] works) =>
        Harmed(Way(works)) is var harmed ? (harmed.Count(teardown.Structure.IsPart), harmed.Count(id => !teardown.Structure.IsPart(id))) : default;

    Route Nothing() => Told(Reachability.Unreachable, Gaps.Missing(source, teardown, goal, query));

    bool IsUntimed(int work) => OperationTime.Of(teardown.Works[work].Operation) is null;

    Route Told(Reachability reachability, Reason why) => new(query, reachability) { Why = why, Recorded = Recorded(), IsOptimal = why.Code is not (RouteReasons.TooMuchWork or RouteReasons.DamageNotFound) };

    Way Way(int[] works) => Walk.Of(teardown.Structure, [.. works.Select(work => teardown.Works[work])], query.FirstTool);

    bool IsOwn(string id) => teardown.Structure.IsPart(id) && groups.Contains(teardown.Structure.GroupOf(id));

    bool Harms(int work) => teardown.Works[work].Operation.Damages.Any(id => !IsOwn(id));

    ImmutableArray<string> Harmed(Way way) => InOrder(way.Stops.SelectMany(stop => stop.Operation.Damages));

    ImmutableArray<string> AtRisk(Way way) => InOrder(way.Stops.SelectMany(stop => stop.Operation.Outcomes).SelectMany(outcome => outcome.Damages));

    ImmutableArray<string> InOrder(IEnumerable<string> ids) => ids.ToHashSet(StringComparer.Ordinal) is { Count: > 0 } wanted
        ? [.. source.Record.Parts.Select(part => part.Id).Concat(teardown.Structure.Joints.Select(joint => joint.Id)).Where(wanted.Contains)]
        : [];

    ImmutableArray<RecordedWay> Recorded() =>
        [.. source.Record.Sequences.Where(sequence => groups is [var only] && teardown.Structure.GroupOf(sequence.Part) == only)
            .Where(sequence => SequenceWalk.FaultIn(teardown, sequence, strictly: false) is null)
            .Select(sequence => new RecordedWay(sequence, Walk.Of(teardown.Structure, SequenceWalk.Works(teardown, sequence), query.FirstTool)))];
}
