using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Checks;

/// <summary>An id named somewhere. Its pointer is made only when it is wrong.</summary>
/// <param name="Entry">The entry that names it.</param>
/// <param name="Member">The member, or the path of members below the entry.</param>
/// <param name="Index">Place in a list; below 0 when the member is no list.</param>
/// <param name="Id">The id named.</param>
/// <param name="Wanted">What it must name.</param>
readonly record struct Reference(RecordEntry Entry, string Member, int Index, string Id, Named Wanted)
{
    public Pointer At(CheckedRecord record)
    {
        var at = Member.Split('/').Aggregate(record.At(Entry), (pointer, step) => pointer.Child(step));
        return Index < 0 ? at : at.Child(Index);
    }
}

/// <summary>Lists every id that a record names.</summary>
static class References
{
    const Named Step = Named.Operation | Named.Milestone;

    public static IEnumerable<Reference> Of(TeardownRecord record) =>
        record.Assessment.Units.SelectMany(Evidence)
            .Concat(record.Parts.SelectMany(OfPart))
            .Concat(record.Joints.SelectMany(OfJoint))
            .Concat(record.Tools.SelectMany(tool => Each(tool, "suppliedWith", tool.SuppliedWith, Named.Part).Concat(Evidence(tool))))
            .Concat(record.Consumables.SelectMany(Evidence))
            .Concat(record.Operations.SelectMany(OfOperation))
            .Concat(record.Milestones.SelectMany(milestone => Conditions(milestone, "when", milestone.When).Concat(Evidence(milestone))))
            .Concat(record.Sequences.SelectMany(OfSequence))
            .Concat(record.Swaps.SelectMany(OfSwap))
            .Concat(record.Locks.SelectMany(OfLock))
            .Concat(record.Documentation.SelectMany(document => Each(document, "parts", document.Parts, Named.Part).Concat(Evidence(document))))
            .Concat(record.Spares.SelectMany(OfSpare))
            .Concat(record.Observations.SelectMany(observation => Each(observation, "parts", observation.Parts, Named.Part).Concat(Evidence(observation))))
            .Concat(record.Findings.SelectMany(finding => Each(finding, "about", finding.About, Named.Anything).Concat(Evidence(finding))))
            .Concat(record.Evidence.SelectMany(Evidence));

    static IEnumerable<Reference> OfPart(Part part) =>
        One(part, "on", part.On, Named.Part)
            .Concat(part.PerUnit.SelectMany(marking => One(marking, "unit", marking.Unit, Named.Unit).Concat(Evidence(marking))))
            .Concat(part.Specs.SelectMany(Evidence))
            .Concat(Evidence(part));

    static IEnumerable<Reference> OfJoint(Joint joint) =>
        Each(joint, "joins", joint.Joins, Named.Part).Concat(Each(joint, "under", joint.Under, Named.Part)).Concat(Evidence(joint));

    static IEnumerable<Reference> OfOperation(Operation operation) =>
        Each(operation, "tools", operation.Tools.AsArray(), Named.Tool)
            .Concat(operation.OrTools.SelectMany((tools, index) => Each(operation, $"orTools/{index}", tools, Named.Tool)))
            .Concat(Conditions(operation, "after", operation.After))
            .Concat(One(operation, "directlyAfter", operation.DirectlyAfter, Named.Operation))
            .Concat(Each(operation, "undoes", operation.Undoes, Named.Joint))
            .Concat(Each(operation, "moves", operation.Moves, Named.Part))
            .Concat(Each(operation, "holdsBy", operation.HoldsBy, Named.Joint))
            .Concat(Each(operation, "removes", operation.Removes, Named.Part))
            .Concat(Each(operation, "damages", operation.Damages, Named.Part | Named.Joint))
            .Concat(Each(operation, "consumes", operation.Consumes, Named.Consumable))
            .Concat(operation.Footage.SelectMany(piece => One(piece, "evidence", piece.Source, Named.Evidence).Concat(One(piece, "unit", piece.Unit, Named.Unit))))
            .Concat(operation.Outcomes.SelectMany(outcome => One(outcome, "unit", outcome.Unit, Named.Unit)
                .Concat(Each(outcome, "damages", outcome.Damages, Named.Part | Named.Joint)).Concat(Evidence(outcome))))
            .Concat(Evidence(operation));

    static IEnumerable<Reference> OfSequence(Sequence sequence) =>
        One(sequence, "part", sequence.Part, Named.Part)
            .Concat(One(sequence, "unit", sequence.Unit, Named.Unit))
            .Concat(Each(sequence, "operations", sequence.Operations, Named.Operation))
            .Concat(Evidence(sequence));

    static IEnumerable<Reference> OfSwap(SwapTrial trial) =>
        One(trial, "host", trial.Host, Named.Unit)
            .Concat(trial.Installed.Select(pair => new Reference(trial, $"installed/{pair.Part}", -1, pair.Part, Named.Part)))
            .Concat(trial.Installed.Select(pair => new Reference(trial, $"installed/{pair.Part}", -1, pair.Unit, Named.Unit)))
            .Concat(trial.Checks.SelectMany(check => Each(check, "implicates", check.Implicates.AsArray(), Named.Part).Concat(Evidence(check))))
            .Concat(Evidence(trial));

    static IEnumerable<Reference> OfLock(LockTrial trial) =>
        One(trial, "unit", trial.Unit, Named.Unit).Concat(trial.Losses.SelectMany(Evidence)).Concat(Evidence(trial));

    static IEnumerable<Reference> OfSpare(Spare spare) =>
        One(spare, "part", spare.Part, Named.Part)
            .Concat(Each(spare, "onlyBundledWith", spare.OnlyBundledWith, Named.Part))
            .Concat(Each(spare, "fastenersIncluded", spare.FastenersIncluded?.Joints ?? [], Named.Joint))
            .Concat(Evidence(spare));

    static IEnumerable<Reference> Conditions(RecordEntry entry, string path, ImmutableArray<Condition> items) =>
        items.SelectMany((item, index) => OfCondition(entry, $"{path}/{index}", item));

    static IEnumerable<Reference> OfCondition(RecordEntry entry, string path, Condition condition) => condition switch
    {
        Condition.Done done => [new(entry, path, -1, done.Id, Step)],
        Condition.Removed removed => [new(entry, path + "/removed", -1, removed.Part, Named.Part)],
        Condition.Away away => [new(entry, path + "/away", -1, away.Part, Named.Part)],
        Condition.Undone undone => [new(entry, path + "/undone", -1, undone.Joint, Named.Joint)],
        Condition.AnyOf any => Conditions(entry, path + "/anyOf", any.Items),
        Condition.AllOf all => Conditions(entry, path + "/allOf", all.Items),
        _ => [],
    };

    static IEnumerable<Reference> Evidence(RecordEntry entry) => Each(entry, "evidence", entry.Evidence, Named.Evidence);

    static IEnumerable<Reference> One(RecordEntry entry, string member, string? id, Named wanted) =>
        id is null ? [] : [new(entry, member, -1, id, wanted)];

    static IEnumerable<Reference> Each(RecordEntry entry, string member, ImmutableArray<string> ids, Named wanted) =>
        ids.Select((id, index) => new Reference(entry, member, index, id, wanted));
}
