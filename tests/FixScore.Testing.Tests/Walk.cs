using FixScore.Records;

namespace FixScore.Testing.Tests;

/// <summary>Does operations one after another, by the meaning the record format gives them.</summary>
sealed class Walk(TeardownRecord record)
{
    readonly HashSet<string> done = new(StringComparer.Ordinal);

    string? last;

    /// <summary>The first operation that cannot be done; <c>null</c> when all can.</summary>
    /// <param name="operations">The operations, in order.</param>
    /// <param name="checkHeld">Whether what is removed must be held by nothing that stays.</param>
    public string? Stuck(IEnumerable<Operation> operations, bool checkHeld)
    {
        foreach (var operation in operations)
        {
            if (!CanBeReached(operation)) return operation.Id;
            done.UnionWith([operation.Id, .. operation.Removes, .. operation.Undoes]);
            if (checkHeld && operation.Removes.Any(IsHeld)) return operation.Id;
            last = operation.Id;
        }
        return null;
    }

    bool CanBeReached(Operation operation) =>
        operation.After.All(Holds)
        && (operation.DirectlyAfter is null || operation.DirectlyAfter == last)
        && record.Joints.Where(joint => operation.Undoes.Contains(joint.Id)).SelectMany(joint => joint.Under).All(done.Contains);

    bool IsHeld(string part) => record.Joints.Any(joint =>
        joint.Joins.Contains(part) && !joint.Integral && !done.Contains(joint.Id) && joint.Joins.Any(other => !done.Contains(other)));

    bool Holds(Condition condition) => condition switch
    {
        Condition.Done { Id: var id } when record.Milestones.FirstOrDefault(each => each.Id == id) is { } milestone => milestone.When.All(Holds),
        Condition.Done each => done.Contains(each.Id),
        Condition.Removed each => done.Contains(each.Part),
        Condition.Away each => done.Contains(each.Part),
        Condition.Undone each => done.Contains(each.Joint),
        Condition.AnyOf any => any.Items.Any(Holds),
        Condition.AllOf all => all.Items.All(Holds),
        _ => false,
    };
}
