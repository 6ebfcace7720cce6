using FixScore.Records;

namespace FixScore.Checks;

/// <summary>What an operation or milestone certainly needs before it: operations and milestones.</summary>
sealed class Needs(CheckedRecord record)
{
    readonly ILookup<string, string> undoing = Taking(record, operation => operation.Undoes).ToLookup(each => each.Named, each => each.Operation, StringComparer.Ordinal);
    readonly Lazy<SoleTaker> removing = new(() => new(record, Taking(record, operation => operation.Removes)));
    readonly Lazy<SoleTaker> shifting = new(() => new(record, Taking(record, operation => operation.Removes.Concat(operation.Moves))));

    public string[] Of(Operation operation) =>
        [.. operation.After.SelectMany(Of).Concat(operation.DirectlyAfter is { } before ? [before] : []).Distinct(StringComparer.Ordinal)];

    public string[] Of(Milestone milestone) => [.. milestone.When.SelectMany(Of).Distinct(StringComparer.Ordinal)];

    static IEnumerable<(string Named, string Operation)> Taking(CheckedRecord record, Func<Operation, IEnumerable<string>> named) =>
        record.Record.Operations.Where(operation => operation.Phase == OperationPhase.Disassembly)
            .SelectMany(named, (operation, id) => (id, operation.Id));

    IEnumerable<string> Of(Condition condition) => condition switch
    {
        Condition.Done done => [done.Id],
        Condition.Removed removed => removing.Value.Of(removed.Part),
        Condition.Away away => shifting.Value.Of(away.Part),
        Condition.Undone undone when record.Find<Joint>(undone.Joint) is { Kind: not JointKind.Contact } => Undoer(undone.Joint),
        Condition.AllOf all => all.Items.SelectMany(Of),
        Condition.AnyOf { Items: [var single] } => Of(single),
        _ => [],
    };

    string[] Undoer(string joint) => undoing[joint].Distinct(StringComparer.Ordinal).Take(2).ToArray() is [var single] ? [single] : [];
}
