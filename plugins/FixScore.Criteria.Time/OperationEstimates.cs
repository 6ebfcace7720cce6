using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Time;

/// <summary>Estimates the operations of a way, one after the other, because a tool stays in hand.</summary>
/// <remarks>
/// An operation takes: each tool that is not in hand from before, each joint it undoes as often as it is there, the action
/// itself where it undoes no joint, each part it takes out or moves, and for a process the wait. Bare hands put no tool
/// down. An unknown tool is none or one that is not in hand; after it nothing is known of what is in hand.
/// </remarks>
sealed class OperationEstimates(TeardownRecord record, bool waits)
{
    readonly HashSet<string> undone = new(StringComparer.Ordinal);
    ImmutableArray<string>? inHand = [];

    public static ImmutableArray<IndexSum> Of(TeardownRecord record, Way way, bool waits)
    {
        var estimates = new OperationEstimates(record, waits);
        return [.. way.Stops.Select(estimates.Of)];
    }

    IndexSum Of(Stop stop)
    {
        var operation = stop.Operation;
        var parts = operation.Removes.Concat(operation.Moves).Distinct(StringComparer.Ordinal).Count();
        return ToolsOf(stop) + Work(stop) + BasicMost.PartAside * parts + Wait(operation);
    }

    IndexSum ToolsOf(Stop stop)
    {
        if (!stop.Tools.IsRecorded)
        {
            inHand = null;
            return new(0, BasicMost.ChangeOfTool);
        }
        if (stop.Tools.Count == 0) return 0m;
        var (before, tools) = (inHand, stop.Tools.AsArray());
        inHand = tools;
        if (before is not { } held) return new(0, BasicMost.ChangeOfTool * tools.Length);
        return BasicMost.ChangeOfTool * tools.Count(tool => !held.Contains(tool));
    }

    IndexSum Work(Stop stop)
    {
        Joint[] joints = [.. record.Joints.Where(joint => stop.Undone.Contains(joint.Id) && undone.Add(joint.Id))];
        if (joints.Length == 0) return BasicMost.Of(stop.Operation.Action).Sequence.Sum;
        return joints.Aggregate((IndexSum)0m, (sum, joint) => sum + AllOf(stop.Operation.Action, joint));
    }

    static IndexSum AllOf(OperationAction action, Joint joint)
    {
        IndexSum one = BasicMost.Of(action, joint.Kind).Sequence.Sum;
        return one.Times(joint.Count);
    }

    IndexSum Wait(Operation operation)
    {
        if (!waits || !BasicMost.Of(operation.Action).IsProcess) return 0m;
        var wait = operation.WaitSeconds ?? default;
        return new(BasicMost.ProcessIndex(wait.Min ?? 0), wait.Max is { } most ? BasicMost.ProcessIndex(most) : null);
    }
}
