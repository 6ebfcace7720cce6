using FixScore.Records;

namespace FixScore.Checks;

/// <summary>What an operation or milestone certainly needs before it: operations and milestones.</summary>
sealed class Needs(CheckedRecord record)
{
    readonly ILookup<string, Operation> undoing = Taking(record).SelectMany(o => o.Undoes, (o, joint) => (o, joint)).ToLookup(p => p.joint, p => p.o, StringComparer.Ordinal);
    readonly ILookup<string, Operation> removing = Taking(record).SelectMany(o => o.Removes, (o, part) => (o, part)).ToLookup(p => p.part, p => p.o, StringComparer.Ordinal);
    readonly ILookup<string, Operation> moving = Taking(record).SelectMany(o => o.Moves, (o, part) => (o, part)).ToLookup(p => p.part, p => p.o, StringComparer.Ordinal);

    public string[] Of(Operation operation) =>
        [.. operation.After.SelectMany(Of).Concat(operation.DirectlyAfter is { } before ? [before] : []).Distinct(StringComparer.Ordinal)];

    public string[] Of(Milestone milestone) => [.. milestone.When.SelectMany(Of).Distinct(StringComparer.Ordinal)];

    static IEnumerable<Operation> Taking(CheckedRecord record) =>
        record.Record.Operations.Where(operation => operation.Phase == OperationPhase.Disassembly);

    IEnumerable<string> Of(Condition condition) => condition switch
    {
        Condition.Done done => [done.Id],
        Condition.Removed removed => Only(Removers(removed.Part)),
        Condition.Away away => Only(Removers(away.Part).Concat(TakenAlong(away.Part).SelectMany(part => moving[part]))),
        Condition.Undone undone when record.Find<Joint>(undone.Joint) is { Kind: not JointKind.Contact } => Only(undoing[undone.Joint]),
        Condition.AllOf all => all.Items.SelectMany(Of),
        Condition.AnyOf { Items: [var single] } => Of(single),
        _ => [],
    };

    IEnumerable<Operation> Removers(string part) => TakenAlong(part).SelectMany(each => removing[each]);

    static IEnumerable<string> Only(IEnumerable<Operation> candidates) =>
        candidates.Select(operation => operation.Id).Distinct(StringComparer.Ordinal).Take(2).ToArray() is [var single] ? [single] : [];

    // Removing a part removes its group and what rides on any of them.
    IEnumerable<string> TakenAlong(string part)
    {
        var parts = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>([part]);
        while (open.TryPop(out var next))
        {
            if (record.Find<Part>(next) is not { } found || !parts.Add(next)) continue;
            if (found.On is { } carrier) open.Push(carrier);
            foreach (var member in record.Groups.Of(next).Parts) open.Push(member.Id);
        }
        return parts;
    }
}
