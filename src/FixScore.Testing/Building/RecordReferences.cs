using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

/// <summary>An id that an entry names, and what it should be the id of.</summary>
readonly record struct Reference(RecordEntry From, string Id, IdKind Kind);

/// <summary>All ids that entries of a record name.</summary>
static class RecordReferences
{
    public static IEnumerable<Reference> Of(TeardownRecord record) =>
    [
        .. record.Parts.SelectMany(Of), .. record.Joints.SelectMany(Of), .. record.Tools.SelectMany(Of),
        .. record.Operations.SelectMany(Of), .. record.Milestones.SelectMany(each => Of(each, each.When)),
        .. record.Sequences.SelectMany(Of), .. record.Swaps.SelectMany(Of),
        .. record.Locks.SelectMany(each => To(each, IdKind.Unit, each.Unit)),
        .. record.Documentation.SelectMany(each => To(each, IdKind.Part, each.Parts)), .. record.Spares.SelectMany(Of),
        .. record.Observations.SelectMany(each => To(each, IdKind.Part, each.Parts)),
        .. record.Findings.SelectMany(each => To(each, IdKind.Anything, each.About)),
        .. RecordIds.Defined(record).SelectMany(each => To(each.Entry, IdKind.Evidence, each.Entry.Evidence)),
    ];

    static IEnumerable<Reference> Of(Part part) =>
        [.. Maybe(part, IdKind.Part, part.On), .. part.PerUnit.SelectMany(each => To(each, IdKind.Unit, each.Unit))];

    static IEnumerable<Reference> Of(Joint joint) => To(joint, IdKind.Part, [.. joint.Joins, .. joint.Under]);

    static IEnumerable<Reference> Of(Tool tool) => To(tool, IdKind.Part, [.. tool.SuppliedWith.Where(id => id != Tool.Product)]);

    static IEnumerable<Reference> Of(Operation operation) =>
    [
        .. To(operation, IdKind.Tool, [.. operation.Tools, .. operation.OrTools.SelectMany(set => set)]),
        .. Of(operation, operation.After),
        .. Maybe(operation, IdKind.Operation, operation.DirectlyAfter),
        .. To(operation, IdKind.Joint, [.. operation.Undoes, .. operation.HoldsBy]),
        .. To(operation, IdKind.Part, [.. operation.Moves, .. operation.Removes]),
        .. To(operation, IdKind.Part | IdKind.Joint, operation.Damages),
        .. To(operation, IdKind.Consumable, operation.Consumes),
        .. operation.Footage.SelectMany(each => To(each, IdKind.Evidence, each.Source)),
        .. operation.Footage.SelectMany(each => To(each, IdKind.Unit, each.Unit)),
        .. operation.Outcomes.SelectMany(each => To(each, IdKind.Unit, each.Unit)),
        .. operation.Outcomes.SelectMany(each => To(each, IdKind.Part | IdKind.Joint, each.Damages)),
    ];

    static IEnumerable<Reference> Of(RecordEntry from, ImmutableArray<Condition> conditions) =>
        conditions.SelectMany(condition => Of(from, condition));

    static IEnumerable<Reference> Of(RecordEntry from, Condition condition) => condition switch
    {
        Condition.Done done => To(from, IdKind.Operation | IdKind.Milestone, done.Id),
        Condition.Removed removed => To(from, IdKind.Part, removed.Part),
        Condition.Away away => To(from, IdKind.Part, away.Part),
        Condition.Undone undone => To(from, IdKind.Joint, undone.Joint),
        Condition.AnyOf any => Of(from, any.Items),
        Condition.AllOf all => Of(from, all.Items),
        _ => [],
    };

    static IEnumerable<Reference> Of(Sequence sequence) =>
    [
        .. To(sequence, IdKind.Part, sequence.Part), .. Maybe(sequence, IdKind.Unit, sequence.Unit),
        .. To(sequence, IdKind.Operation, sequence.Operations),
    ];

    static IEnumerable<Reference> Of(SwapTrial trial) =>
    [
        .. To(trial, IdKind.Unit, trial.Host),
        .. To(trial, IdKind.Part, [.. trial.Installed.Select(each => each.Part)]),
        .. To(trial, IdKind.Unit, [.. trial.Installed.Select(each => each.Unit)]),
        .. trial.Checks.SelectMany(each => To(each, IdKind.Part, each.Implicates.AsArray())),
    ];

    static IEnumerable<Reference> Of(Spare spare) =>
    [
        .. To(spare, IdKind.Part, [spare.Part, .. spare.OnlyBundledWith]),
        .. To(spare, IdKind.Joint, spare.FastenersIncluded?.Joints ?? []),
    ];

    static IEnumerable<Reference> Maybe(RecordEntry from, IdKind kind, string? id) => id is null ? [] : To(from, kind, id);

    static IEnumerable<Reference> To(RecordEntry from, IdKind kind, params ImmutableArray<string> ids) =>
        ids.Select(id => new Reference(from, id, kind));
}
