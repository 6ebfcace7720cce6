using FixScore.Records;
using Google.OrTools.Sat;

namespace FixScore.Benchmarks.RouteProofs;

/// <summary>The shortest route to a part as a constraint program: which operations are done, and in which order.</summary>
/// <remarks>
/// Only operations that can help are in it. Each demand of an operation is a clause over what was done before it; an order is
/// kept by places. Says nothing about unknown tools or times.
/// </remarks>
sealed class RouteModel
{
    readonly TeardownRecord record;
    readonly Effects effects;
    readonly SortedDictionary<int, BoolVar> done = [];
    readonly Dictionary<int, IntVar> place = [];
    readonly Dictionary<(int Before, int Of), BoolVar> before = [];
    readonly Dictionary<int, HashSet<int>> surelyBefore = [];
    readonly Queue<int> open = new();

    /// <summary>Builds the model.</summary>
    /// <param name="record">The record.</param>
    /// <param name="part">Id of the part to free.</param>
    /// <param name="withOpeners">Whether operations that only take up a tool early are in it; that can save a step.</param>
    public RouteModel(TeardownRecord record, string part, bool withOpeners)
    {
        this.record = record;
        effects = new(record, part);
        foreach (var ways in effects.Goal()) Model.AddBoolOr(ways.Select(Done));
        DemandAll();
        if (!withOpeners) return;
        var useful = done.Keys.SelectMany(each => ToolSets(Operation(each))).SelectMany(tools => tools).ToHashSet();
        foreach (var opener in effects.All.Where(each => ToolSets(Operation(each)).Any(tools => tools.Any(useful.Contains)))) Done(opener);
        DemandAll();
    }

    public CpModel Model { get; } = new();

    /// <summary>The operations that can help, in the order of the record.</summary>
    public IReadOnlyDictionary<int, BoolVar> Doing => done;

    public Operation Operation(int index) => effects.Operations[index];

    public IntVar Place(int operation) => place[operation];

    /// <summary>Makes it shortest in operations or seconds.</summary>
    public void MinimiseSum(Func<Operation, long> cost)
    {
        Model.Minimize(LinearExpr.Sum(done.Select(each => each.Value * cost(effects.Operations[each.Key]))));
        if (done.Keys.Any(each => Operation(each).DirectlyAfter is not null)) KeepNeighbours();
    }

    /// <summary>Whether an operation needs another one before it whatever else is done.</summary>
    public bool SurelyAfter(int operation, int other, HashSet<int>? seen = null) =>
        surelyBefore.GetValueOrDefault(operation) is { } needs
        && (needs.Contains(other) || needs.Any(need => (seen ??= []).Add(need) && SurelyAfter(need, other, seen)));

    static IEnumerable<IEnumerable<string>> ToolSets(Operation operation) =>
        operation.OrTools.Select(tools => tools.AsEnumerable()).Prepend(operation.Tools);

    void DemandAll()
    {
        while (open.TryDequeue(out var operation)) Demand(operation);
    }

    BoolVar Done(int operation)
    {
        if (done.TryGetValue(operation, out var variable)) return variable;
        open.Enqueue(operation);
        place[operation] = Model.NewIntVar(0, effects.All.Length - 1, $"place {operation}");
        return done[operation] = Model.NewBoolVar($"done {operation}");
    }

    void KeepNeighbours()
    {
        Model.AddNoOverlap(done.Select(each => Model.NewOptionalFixedSizeIntervalVar(place[each.Key], 1, each.Value, $"slot {each.Key}")));
        foreach (var (operation, doing) in done)
            if (Operation(operation).DirectlyAfter is { } neighbour && Find(neighbour) is { } first)
                Model.Add(place[operation] == place[first] + 1).OnlyEnforceIf(doing);
    }

    void Demand(int operation)
    {
        var entry = effects.Operations[operation];
        foreach (var item in entry.After) Require(operation, [Holds(operation, item)]);
        if (entry.DirectlyAfter is { } neighbour) RequireOne(operation, Find(neighbour) is { } first ? [first] : []);
        foreach (var joint in entry.Undoes.Select(effects.Joint).Where(joint => !joint.Integral))
            foreach (var part in joint.Under) RequireOne(operation, effects.Shifting(part));
        foreach (var (joint, stays) in effects.Strained(operation)) RequireOne(operation, [.. effects.Undoing(joint).Union(effects.Removing(stays))]);
    }

    int? Find(string id) => effects.All.Cast<int?>().FirstOrDefault(i => effects.Operations[i!.Value].Id == id);

    void RequireOne(int operation, int[] ways)
    {
        ways = [.. ways.Where(way => way != operation)];
        if (ways.Length == 1) (surelyBefore.TryGetValue(operation, out var needs) ? needs : surelyBefore[operation] = []).Add(ways[0]);
        Require(operation, ways.Select(way => Before(way, operation)));
    }

    void Require(int operation, IEnumerable<ILiteral> ways) => Model.AddBoolOr(ways.Append(Done(operation).Not()));

    ILiteral Before(int way, int operation)
    {
        if (way == operation) return Model.FalseLiteral();
        if (before.TryGetValue((way, operation), out var literal)) return literal;
        literal = before[(way, operation)] = Model.NewBoolVar($"{way} before {operation}");
        Model.AddImplication(literal, Done(way));
        Model.Add(place[way] + 1 <= place[operation]).OnlyEnforceIf(literal);
        return literal;
    }

    ILiteral Holds(int operation, Condition item) => item switch
    {
        Condition.Done each when record.Milestones.FirstOrDefault(milestone => milestone.Id == each.Id) is { } milestone => All(operation, milestone.When),
        Condition.Done each => Find(each.Id) is { } other ? Before(other, operation) : Model.FalseLiteral(),
        Condition.Removed removed => Any(effects.Removing(removed.Part).Select(way => Before(way, operation))),
        Condition.Away away => Any(effects.Shifting(away.Part).Select(way => Before(way, operation))),
        Condition.Undone undone => Any(effects.Undoing(effects.Joint(undone.Joint)).Select(way => Before(way, operation))),
        Condition.AnyOf any => Any(any.Items.Select(each => Holds(operation, each))),
        Condition.AllOf all => All(operation, all.Items),
        _ => throw new InvalidOperationException(),
    };

    BoolVar Any(IEnumerable<ILiteral> ways)
    {
        var literal = Model.NewBoolVar("any");
        Model.AddBoolOr(ways.Append(literal.Not()));
        return literal;
    }

    BoolVar All(int operation, IEnumerable<Condition> items)
    {
        var literal = Model.NewBoolVar("all");
        foreach (var item in items) Model.AddImplication(literal, Holds(operation, item));
        return literal;
    }
}
