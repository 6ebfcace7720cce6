using System.Collections.Frozen;
using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Disassembly.Model;

/// <summary>Turns what a record asks for into needs.</summary>
sealed class NeedBuilder(Structure structure, ImmutableArray<Operation> operations, Effects effects)
{
    readonly FrozenDictionary<string, int> numbers = operations.Select((operation, index) => (operation.Id, index))
        .ToFrozenDictionary(pair => pair.Id, pair => pair.index, StringComparer.Ordinal);

    readonly FrozenDictionary<string, Milestone> milestones = structure.Record.Milestones.ToFrozenDictionary(milestone => milestone.Id, StringComparer.Ordinal);

    readonly Dictionary<string, Need> reached = new(StringComparer.Ordinal);
    readonly HashSet<string> asked = new(StringComparer.Ordinal);
    int cuts;

    public int? Number(string? operation) => operation is null ? null : numbers.TryGetValue(operation, out var number) ? number : -1;

    /// <summary>What an operation needs: its conditions, reach to its joints, freedom of what it takes.</summary>
    public Need Of(Operation operation)
    {
        var (removed, both) = (structure.Along(operation.Removes), structure.Along([.. operation.Removes, .. operation.Moves]));
        return AllOf([
            .. operation.After.Select(Of),
            .. structure.Undone(operation).SelectMany(Reach),
            .. Freedom(removed, removed, [.. operation.Undoes]),
            .. Freedom(structure.Moved(operation), both, [.. operation.Undoes, .. operation.HoldsBy])]);
    }

    /// <summary>What it takes for a group to be free: every joint to what does not ride on it undone, and itself removed where some operation does that.</summary>
    public Need Freed(int group) => AllOf([
        .. structure.Crossing(structure.Along([group])).Where(joint => structure.Sides(joint).Contains(group)).Select(Undone),
        .. effects.Naming(group) is { Length: > 0 } by ? [new Need.Fact(by, new(WantKind.Removed, First(group)))] : Array.Empty<Need>()]);

    Need Of(Condition condition) => condition switch
    {
        Condition.Done done => Done(done.Id),
        Condition.Removed removed => new Need.Fact(effects.Taking(structure.GroupOf(removed.Part)), new(WantKind.Removed, removed.Part)),
        Condition.Away away => Away(away.Part, null),
        Condition.Undone undone => Undone(structure.JointOf(undone.Joint)),
        Condition.AllOf all => AllOf([.. all.Items.Select(Of)]),
        Condition.AnyOf any => AnyOf([.. any.Items.Select(Of)]),
        _ => throw new InvalidOperationException("No such condition."),
    };

    Need Done(string id) => milestones.TryGetValue(id, out var milestone)
        ? Reached(milestone)
        : new Need.Fact(numbers.TryGetValue(id, out var number) ? [number] : [], new(WantKind.Done, id));

    // Each is worked out once, however many conditions name it. One that leads back to itself by a choice is no help to
    // itself there; what was worked out with that left out holds only inside it and is not kept.
    Need Reached(Milestone milestone)
    {
        if (reached.TryGetValue(milestone.Id, out var known)) return known;
        if (!asked.Add(milestone.Id))
        {
            cuts++;
            return new Need.Fact([], new(WantKind.Done, milestone.Id));
        }
        var before = cuts;
        var need = AllOf([.. milestone.When.Select(Of)]);
        asked.Remove(milestone.Id);
        if (cuts == before || asked.Count == 0) reached[milestone.Id] = need;
        return need;
    }

    IEnumerable<Need> Reach(int joint) => structure.Joints[joint].Under.Select(part => Away(part, structure.Joints[joint].Id));

    Need Away(string part, string? over) => new Need.Fact(effects.Shifting(structure.GroupOf(part)), new(WantKind.Away, part, over));

    Need Undone(int joint) => new Need.Fact(effects.Undoing(joint), new(WantKind.Undone, structure.Joints[joint].Id));

    // Every joint from what is taken to what stays: undone before or by the operation, unless the other side is gone already.
    IEnumerable<Need> Freedom(int[] taken, int[] leaving, HashSet<string> exempt) =>
        from joint in structure.Crossing(taken)
        let entry = structure.Joints[joint]
        where entry.Kind != JointKind.Contact && !exempt.Contains(entry.Id)
        let staying = structure.Sides(joint).Except(leaving).ToArray()
        where staying.Length > 0
        select AnyOf([Undone(joint), AllOf([.. staying.Select(Gone)])]);

    Need Gone(int group) => new Need.Fact(effects.Taking(group), new(WantKind.Removed, First(group)));

    string First(int group) => structure.Groups[group].Parts[0].Id;

    static Need AllOf(ImmutableArray<Need> needs)
    {
        ImmutableArray<Need> flat = [.. needs.SelectMany(need => need is Need.All all ? all.Of : [need]).Distinct(ReferenceEqualityComparer.Instance).Cast<Need>()];
        return flat is [var only] ? only : new Need.All(flat);
    }

    // One fact or another is a fact that more operations bring about; the text names the first.
    static Need AnyOf(ImmutableArray<Need> needs)
    {
        if (needs is [var only]) return only;
        if (!needs.All(need => need is Need.Fact)) return new Need.Any(needs);
        return new Need.Fact([.. needs.Cast<Need.Fact>().SelectMany(fact => fact.By).Distinct().Order()], ((Need.Fact)needs[0]).Want);
    }
}
