using FixScore.Disassembly;
using FixScore.Records;
using Google.OrTools.Sat;

namespace FixScore.Benchmarks.RouteProofs;

/// <summary>Steps of a route as a tour over the operations, each with a choice of tools; arcs cost what the change from one to the next costs.</summary>
/// <remarks>After bare hands the tools in hand are those from before, so they are carried along by variables.</remarks>
sealed class StepModel
{
    sealed record Stop(int Operation, string[] Tools, bool IsHot, bool StaysOpen)
    {
        public bool IsBare => Tools.Length == 0;
    }

    readonly RouteModel route;
    readonly FirstTool firstTool;
    readonly Stop[] stops;
    readonly string[][] hands;
    readonly BoolVar[]?[] carried;
    readonly IntVar?[] takenUp;
    readonly List<LinearExpr> costs = [];
    readonly CircuitConstraint tour;

    StepModel(RouteModel route, TeardownRecord record, FirstTool firstTool)
    {
        (this.route, this.firstTool) = (route, firstTool);
        var hot = record.Tools.Where(tool => tool.HeatC is not null).Select(tool => tool.Id).ToHashSet();
        stops = [.. route.Doing.Keys.SelectMany(each => Stops(each, route.Operation(each), hot))];
        hands = [[], .. stops.Where(stop => !stop.IsBare).Select(stop => stop.Tools).DistinctBy(tools => string.Join(' ', tools))];
        carried = [.. stops.Select(stop => stop.IsBare ? hands.Select(_ => route.Model.NewBoolVar("hand")).ToArray() : null)];
        takenUp = [.. stops.Select(stop => stop.IsBare ? null : route.Model.NewIntVar(0, stop.Tools.Length, "taken up"))];
        tour = route.Model.AddCircuit();
        Tour();
        route.Model.Minimize(LinearExpr.Sum(costs.Concat(takenUp.OfType<IntVar>())));
    }

    /// <summary>Makes the route shortest in steps.</summary>
    public static void Minimise(RouteModel route, TeardownRecord record, FirstTool firstTool) => _ = new StepModel(route, record, firstTool);

    static IEnumerable<Stop> Stops(int index, Operation operation, HashSet<string> hot) =>
        from tools in operation.OrTools.Select(tools => tools.ToArray()).Prepend([.. operation.Tools])
        let heatOrCleaning = operation.Action is OperationAction.Heat or OperationAction.Clean or OperationAction.RemoveResidue || tools.Any(hot.Contains)
        select new Stop(index, tools.Order(StringComparer.Ordinal).ToArray(), heatOrCleaning, !heatOrCleaning && operation.Removes.IsEmpty && operation.Moves.IsEmpty);

    // Node 0 is before the first and after the last operation; a stop that is left out is a loop.
    void Tour()
    {
        tour.AddArc(0, 0, None());
        for (var to = 0; to < stops.Length; to++)
        {
            var used = route.Model.NewBoolVar("used");
            tour.AddArc(to + 1, to + 1, used.Not());
            tour.AddArc(to + 1, 0, route.Model.NewBoolVar("last"));
            if (route.Operation(stops[to].Operation).DirectlyAfter is null) Begin(to);
            for (var from = 0; from < stops.Length; from++)
                if (MayFollow(stops[from].Operation, stops[to].Operation)) Follow(from, to);
            uses.Add((stops[to].Operation, used));
        }
        foreach (var (operation, doing) in route.Doing)
            route.Model.Add(LinearExpr.Sum(uses.Where(use => use.Operation == operation).Select(use => use.Used)) == doing);
    }

    readonly List<(int Operation, BoolVar Used)> uses = [];

    BoolVar None()
    {
        var none = route.Model.NewBoolVar("nothing to do");
        foreach (var doing in route.Doing.Values) route.Model.AddImplication(none, doing.Not());
        return none;
    }

    bool MayFollow(int from, int to) =>
        from != to && !route.SurelyAfter(from, to)
        && (route.Operation(to).DirectlyAfter is not { } neighbour || neighbour == route.Operation(from).Id);

    void Begin(int to)
    {
        var arc = route.Model.NewBoolVar("first");
        tour.AddArc(0, to + 1, arc);
        route.Model.Add(route.Place(stops[to].Operation) == 0).OnlyEnforceIf(arc);
        costs.Add(arc * Math.Max(1, stops[to].Tools.Length));
        if (carried[to] is { } hand) route.Model.AddImplication(arc, hand[0]);
    }

    void Follow(int from, int to)
    {
        var arc = route.Model.NewBoolVar("arc");
        tour.AddArc(from + 1, to + 1, arc);
        route.Model.Add(route.Place(stops[to].Operation) == route.Place(stops[from].Operation) + 1).OnlyEnforceIf(arc);
        Carry(arc, from, to);
        if (!stops[from].StaysOpen || stops[to].IsHot) costs.Add(arc * Math.Max(1, stops[to].Tools.Length));
        else if (carried[from] is not { } hand) costs.Add(arc * TakenUp(stops[from].Tools, stops[to].Tools));
        else if (!stops[to].IsBare)
            for (var i = 0; i < hands.Length; i++)
                route.Model.Add(takenUp[to]! >= TakenUp(hands[i], stops[to].Tools)).OnlyEnforceIf([arc, hand[i]]);
    }

    void Carry(BoolVar arc, int from, int to)
    {
        if (carried[to] is not { } after) return;
        for (var i = 0; i < hands.Length; i++)
        {
            if (carried[from] is { } hand) route.Model.AddBoolOr([arc.Not(), hand[i].Not(), after[i]]);
            else if (hands[i].SequenceEqual(stops[from].Tools)) route.Model.AddImplication(arc, after[i]);
        }
    }

    int TakenUp(string[] inHand, string[] tools)
    {
        var taken = tools.Except(inHand).Count();
        return inHand.Length == 0 && taken > 0 && firstTool == FirstTool.NoChange ? taken - 1 : taken;
    }
}
