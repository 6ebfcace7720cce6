using System.Collections.Immutable;
using System.Text;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Generated;

/// <summary>Makes a record that shows a fault as small as it can be while it still shows one.</summary>
static class Shrinking
{
    /// <summary>Fails with the smallest record found, as JSON, when a record shows a fault.</summary>
    public static void FailOn(TeardownRecord record, Func<TeardownRecord, IEnumerable<string>> faults)
    {
        if (!Shows(record, faults)) return;
        var smallest = Smallest(record, faults);
        Assert.Fail($"{string.Join('\n', faults(smallest).Take(4))}\n{Encoding.UTF8.GetString(RecordFile.ToJson(smallest))}");
    }

    public static TeardownRecord Smallest(TeardownRecord record, Func<TeardownRecord, IEnumerable<string>> faults)
    {
        while (Simpler(record).FirstOrDefault(each => Shows(each, faults)) is { } simpler) record = simpler;
        return record;
    }

    static bool Shows(TeardownRecord record, Func<TeardownRecord, IEnumerable<string>> faults) => faults(record).Any();

    static IEnumerable<TeardownRecord> Simpler(TeardownRecord record) =>
        record.Parts.Where(_ => record.Parts.Count > 1).Select(part => Scrubbing.Without(record, part.Id))
            .Concat(record.Operations.Select(operation => Scrubbing.Without(record, operation.Id)))
            .Concat(record.Joints.Select(joint => Scrubbing.Without(record, joint.Id)))
            .Concat(record.Milestones.Select(milestone => Scrubbing.Without(record, milestone.Id)))
            .Concat(record.Operations.SelectMany(Plainer, (operation, plainer) => With(record, operation, plainer)))
            .Concat(record.Joints.SelectMany(Plainer, (joint, plainer) => record with { Joints = Replaced(record.Joints, joint, plainer) }))
            .Concat(record.Parts.Where(part => part.On is not null || !part.Reach.Is(Reach.NotTried))
                .Select(part => record with { Parts = Replaced(record.Parts, part, part with { On = null, Reach = Reach.NotTried }) }));

    static TeardownRecord With(TeardownRecord record, Operation operation, Operation plainer) =>
        record with { Operations = Replaced(record.Operations, operation, plainer) };

    static IEnumerable<Operation> Plainer(Operation operation) => new[]
    {
        operation with { After = operation.After.IsEmpty ? operation.After : operation.After[1..] },
        operation with { DirectlyAfter = null },
        operation with { Damages = Fewer(operation.Damages) },
        operation with { Outcomes = Fewer(operation.Outcomes) },
        operation with { OrTools = Fewer(operation.OrTools) },
        operation with { Footage = Fewer(operation.Footage) },
        operation with { HoldsBy = Fewer(operation.HoldsBy) },
        operation with { Undoes = Fewer(operation.Undoes) },
        operation with { Removes = Fewer(operation.Removes) },
        operation with { Moves = Fewer(operation.Moves) },
        operation.Tools is { IsRecorded: true, Count: 0 } ? operation : operation with { Tools = [] },
        operation.Seconds is { IsExact: true, Min: 1 } ? operation : operation with { Seconds = 1, Footage = [] },
        operation with { Action = OperationAction.Other },
        operation with { Phase = OperationPhase.Disassembly },
    }.Where(plainer => plainer != operation);

    static IEnumerable<Joint> Plainer(Joint joint) => new[]
    {
        joint with { Under = Fewer(joint.Under) },
        joint with { Integral = false },
        joint with { Kind = JointKind.Other },
        joint.Joins.Length > 2 ? joint with { Joins = joint.Joins[1..] } : joint,
    }.Where(plainer => plainer != joint);

    static ImmutableArray<T> Fewer<T>(ImmutableArray<T> list) => list.IsEmpty ? list : list[1..];

    static EntryList<T> Replaced<T>(EntryList<T> list, T old, T with) where T : class => EntryList.Of(list.AsArray().Replace(old, with, ReferenceEqualityComparer.Instance));
}
