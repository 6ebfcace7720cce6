using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Generated;

/// <summary>Takes an entry out of a record, with every word about it.</summary>
static class Scrubbing
{
    /// <summary>The record without an entry, and without joints that would hold one part only.</summary>
    public static TeardownRecord Without(TeardownRecord record, string id) =>
        record.Joints.FirstOrDefault(joint => joint.Id != id && joint.Joins.Contains(id) && joint.Joins.Length < 3) is { } joint
            ? Without(Without(record, joint.Id), id)
            : record with
            {
                Parts = [.. record.Parts.Where(part => part.Id != id).Select(part => part.On == id ? part with { On = null } : part)],
                Joints = [.. record.Joints.Where(joint => joint.Id != id).Select(joint => joint with { Joins = Rest(joint.Joins, id), Under = Rest(joint.Under, id) })],
                Operations = [.. record.Operations.Where(operation => operation.Id != id).Select(operation => Without(operation, id))],
                Milestones = [.. record.Milestones.Where(milestone => milestone.Id != id).Select(milestone => milestone with { When = Rest(milestone.When, id) })],
            };

    static Operation Without(Operation operation, string id) => operation with
    {
        After = Rest(operation.After, id),
        DirectlyAfter = operation.DirectlyAfter == id ? null : operation.DirectlyAfter,
        Undoes = Rest(operation.Undoes, id),
        Removes = Rest(operation.Removes, id),
        Moves = Rest(operation.Moves, id),
        HoldsBy = Rest(operation.HoldsBy, id),
        Damages = Rest(operation.Damages, id),
        Outcomes = [.. operation.Outcomes.Select(outcome => outcome with { Damages = Rest(outcome.Damages, id) })],
    };

    static ImmutableArray<string> Rest(ImmutableArray<string> ids, string id) => ids.Remove(id);

    static ImmutableArray<Condition> Rest(ImmutableArray<Condition> items, string id) => [.. items.Select(item => Rest(item, id)).OfType<Condition>()];

    static Condition? Rest(Condition item, string id) => item switch
    {
        Condition.Done done => done.Id == id ? null : done,
        Condition.Removed removed => removed.Part == id ? null : removed,
        Condition.Away away => away.Part == id ? null : away,
        Condition.Undone undone => undone.Joint == id ? null : undone,
        Condition.AnyOf any => Rest(any.Items, id) is { IsEmpty: false } items ? new Condition.AnyOf(items) : null,
        Condition.AllOf all => Rest(all.Items, id) is { IsEmpty: false } items ? new Condition.AllOf(items) : null,
        _ => item,
    };
}
