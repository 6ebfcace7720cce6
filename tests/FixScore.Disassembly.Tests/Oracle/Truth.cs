using FixScore.Records;

namespace FixScore.Disassembly.Tests.Oracle;

/// <summary>What the shortest route to parts must be, by trying every sequence of operations.</summary>
/// <param name="Reachability">Whether the parts can be freed without damage.</param>
/// <param name="Best">The route; with unknown tools the one with most steps; the least damaging one when only damage frees the parts.</param>
/// <param name="Least">With unknown tools the route with fewest steps, else the same.</param>
sealed record TrueRoute(Reachability Reachability, Best? Best, Best? Least);

/// <summary>All true routes of a record.</summary>
sealed class Truth(TeardownRecord record)
{
    readonly Simulator simulator = new(record);
    readonly StateSpace space = new(new(record));

    public TrueRoute To(IEnumerable<string> parts, RouteCost cost, FirstTool firstTool)
    {
        int[] groups = [.. parts.Select(simulator.Sides.Group).Distinct()];
        if (groups.Any(simulator.IsUnknown))
            return new(groups.Where(simulator.IsUnknown).Any(IsNotPossible) ? Reachability.Unreachable : Reachability.Unknown, null, null);
        // Harm to the parts' own groups is reported, and counts only where other damage cannot be avoided either.
        var clean = Search(new(groups, operation => !Bars(operation, groups), _ => (0, 0)), cost, firstTool);
        return clean.Best is not null
            ? new(Reachability.Reachable, clean.Best, clean.Least)
            : Search(new(groups, _ => true, Damage), cost, firstTool);
    }

    /// <summary>Steps of a sequence with the best choice of tools.</summary>
    public decimal StepsOf(IEnumerable<int> sequence, FirstTool firstTool, UnknownTools unknown)
    {
        var rule = Steps(firstTool, unknown);
        IEnumerable<(Bench Bench, decimal Cost)> all = [(new(0, false), 0)];
        foreach (var operation in sequence)
            all = all.SelectMany(each => rule(each.Bench, operation), (each, next) => (next.After, each.Cost + next.Cost)).ToArray();
        return all.Min(each => each.Cost);
    }

    // What is to be freed, by which operations, and what harm counts.
    sealed record Task(int[] Groups, Func<int, bool> IsAllowed, Func<State, (int Parts, int Joints)> Damage);

    TrueRoute Search(Task task, RouteCost cost, FirstTool firstTool) => cost switch
    {
        RouteCost.Steps when record.Operations.All(operation => operation.Tools.IsRecorded) => Same(Search(task, Steps(firstTool, UnknownTools.Least))),
        RouteCost.Steps => new(Reachability.Unreachable, Search(task, Steps(firstTool, UnknownTools.Most)), Search(task, Steps(firstTool, UnknownTools.Least))),
        RouteCost.Operations => Same(Search(task, Each(_ => 1))),
        _ => Same(Seconds(task)),
    };

    static TrueRoute Same(Best? best) => new(Reachability.Unreachable, best, best);

    // Operations without time are used only when no fully timed way exists; damage counts before that.
    Best? Seconds(Task task)
    {
        var any = Search(task, Each(_ => 1));
        var timed = Search(task with { IsAllowed = operation => task.IsAllowed(operation) && Timing.Of(simulator.Operations[operation]) is not null },
            Each(operation => Timing.Of(operation)?.Middle() ?? 0));
        return timed is not null && timed.SameDamage(any!) ? timed : any;
    }

    Best? Search(Task task, Exhaustive.Rule rule)
    {
        var all = task.Groups.Select(simulator.Freedom).Aggregate((a, b) => (a.Undone | b.Undone, a.Removed | b.Removed));
        return new Exhaustive(space, new(state => state.Undone.Holds(all.Undone) && state.Removed.Holds(all.Removed), task.Damage, task.IsAllowed), rule).Search();
    }

    Exhaustive.Rule Each(Func<Operation, decimal> cost)
    {
        decimal[] costs = [.. simulator.Operations.Select(cost)];
        return (bench, operation) => [(bench, costs[operation])];
    }

    Exhaustive.Rule Steps(FirstTool firstTool, UnknownTools unknown)
    {
        var walk = new StepWalk(record, firstTool, unknown);
        return (bench, operation) => Array.ConvertAll(walk.Choices(operation), tools => walk.Do(bench, operation, tools));
    }

    bool Bars(int operation, int[] groups)
    {
        var damages = simulator.Operations[operation].Damages;
        return simulator.Sides.Joints(damages) != 0 || (simulator.Sides.Parts(damages) & ~groups.Aggregate((a, b) => a | b)) != 0;
    }

    (int Parts, int Joints) Damage(State state)
    {
        var damages = simulator.Operations.Where((_, i) => state.Done.Has(i)).SelectMany(operation => operation.Damages).ToArray();
        return (int.PopCount(simulator.Sides.Parts(damages)), int.PopCount(simulator.Sides.Joints(damages)));
    }

    bool IsNotPossible(int group) => record.Parts.Where((_, i) => group.Has(i)).Any(part => part.Reach.Is(Reach.NotPossible));
}
