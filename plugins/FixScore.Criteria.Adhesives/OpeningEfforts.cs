using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Adhesives;

/// <summary>Reads from the recorded operations what it takes to open a bond.</summary>
/// <remarks>
/// An operation needs what its tools and its action bring, and what it follows: the chain of <c>directlyAfter</c>, and
/// operations named in <c>after</c>, as far as they heat, dissolve or (in the chain) damage. Every set of tools is a choice.
/// Unknown tools are bare hands, a plain tool or any recorded tool that heats or dissolves; without a list of tools, any heat.
/// </remarks>
sealed class OpeningEfforts(TeardownRecord record)
{
    static readonly ImmutableArray<Effort> Anything = [.. Enum.GetValues<Means>().Select(means => new Effort.Act(means, null))];

    readonly Dictionary<string, Operation> operations = record.Operations.ToDictionary(operation => operation.Id, StringComparer.Ordinal);
    readonly Dictionary<string, Tool> tools = record.Tools.ToDictionary(tool => tool.Id, StringComparer.Ordinal);

    public ImmutableArray<Operation> Undoing(Joint bond) =>
        [.. record.Operations.Where(operation => operation.Phase == OperationPhase.Disassembly && operation.Undoes.Contains(bond.Id))];

    public Effort Of(Joint bond)
    {
        var undoing = Undoing(bond);
        return undoing.IsEmpty ? new Effort.Unclear(Anything) : new Effort.Choice([.. undoing.Select(operation => Of(operation, bond))]);
    }

    Effort Of(Operation operation, Joint bond) => new Effort.Together(
    [
        Sets(operation, set => Hand(operation, set, bond)),
        .. Chain(operation).Select(before => Sets(before, _ => Effort.None)),
        .. Chain(operation).Prepend(operation).SelectMany(each => each.After).Select(Prepared),
        .. Chain(operation).Prepend(operation).Where(each => !each.Damages.IsEmpty).Select(each => new Effort.Act(Means.Damage, each)),
    ]);

    // A cycle would be a wrong record; the bound keeps it from hanging us.
    IEnumerable<Operation> Chain(Operation operation)
    {
        for (var left = operations.Count; left > 0; left--)
        {
            if (operation.DirectlyAfter is null || !operations.TryGetValue(operation.DirectlyAfter, out operation!)) yield break;
            yield return operation;
        }
    }

    Effort Prepared(Condition condition) => condition switch
    {
        Condition.Done done when operations.TryGetValue(done.Id, out var operation) => Sets(operation, _ => Effort.None),
        Condition.AllOf all => new Effort.Together([.. all.Items.Select(Prepared)]),
        Condition.AnyOf any => new Effort.Choice([.. any.Items.Select(Prepared)]),
        _ => Effort.None,
    };

    /// <summary>An operation with any of its sets of tools, and what the hand does with a set (<c>null</c>: unknown).</summary>
    Effort Sets(Operation operation, Func<ImmutableArray<string>?, Effort> hand)
    {
        var first = operation.Tools.IsRecorded ? operation.Tools.AsArray() : (ImmutableArray<string>?)null;
        return new Effort.Choice([.. operation.OrTools.Select(set => (ImmutableArray<string>?)set).Prepend(first).Select(
            set => new Effort.Together([hand(set), set is null ? UnknownTools(operation) : KnownTools(operation, set.Value)]))]);
    }

    static Effort Hand(Operation operation, ImmutableArray<string>? set, Joint bond)
    {
        Effort tool = new Effort.Act(Means.Tool, operation), bare = new Effort.Act(Means.BareHands, operation);
        var type = bond.Adhesive?.Type ?? default;
        if (operation.Action is OperationAction.Pull or OperationAction.Peel && type.MayBe(AdhesiveType.StretchRelease))
        {
            var release = new Effort.Act(Means.StretchRelease, operation);
            bare = type.Is(AdhesiveType.StretchRelease) ? release : new Effort.Unclear([bare, release]);
        }
        return set is null ? new Effort.Unclear([bare, tool]) : set.Value.IsEmpty ? bare : tool;
    }

    Effort KnownTools(Operation operation, ImmutableArray<string> set)
    {
        ImmutableArray<Tool> used = [.. set.Where(tools.ContainsKey).Select(id => tools[id])];
        var efforts = ImmutableArray.CreateBuilder<Effort>();
        if (operation.Action == OperationAction.Heat || used.Any(tool => tool.HeatC is not null))
            efforts.Add(new Effort.Act(Means.Heat, operation, Hottest(used)));
        if (operation.Action == OperationAction.ApplySolvent || used.Any(tool => tool.Solvent is not null))
            efforts.Add(new Effort.Act(Means.Solvent, operation));
        return new Effort.Together(efforts.ToImmutable());
    }

    Effort UnknownTools(Operation operation) =>
        new Effort.Together([KnownTools(operation, []), new Effort.Unclear(Possible(operation))]);

    ImmutableArray<Effort> Possible(Operation operation) => record.Tools.IsRecorded
        ? [Effort.None, .. record.Tools.Select(tool => KnownTools(operation, [tool.Id]))]
        : [Effort.None, new Effort.Act(Means.Heat, operation), new Effort.Act(Means.Solvent, operation)];

    static Interval? Hottest(ImmutableArray<Tool> used)
    {
        Interval? hottest = null;
        foreach (var tool in used.Where(tool => tool.HeatC is not null))
        {
            var heat = tool.HeatC!.Value.Within(-Bond.Unlimited, Bond.Unlimited);
            hottest = hottest is { } other ? new(Math.Max(heat.Low, other.Low), Math.Max(heat.High, other.High)) : heat;
        }
        return hottest;
    }
}
