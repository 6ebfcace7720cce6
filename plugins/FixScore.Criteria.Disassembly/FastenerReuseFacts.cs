using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Disassembly;

/// <summary>A fastener undone on the way, and how good it can be for repair.</summary>
sealed record UndoneJoint(Joint Joint, ImmutableArray<FastenerLevel> Possible);

/// <summary>Work judged, and the fasteners undone in it, in the order of the record.</summary>
sealed record FastenersOfWork(JudgedWork Work, ImmutableArray<UndoneJoint> Undone);

/// <summary>The fasteners undone on the way to a part; with unknown tools for each way it can be.</summary>
sealed record FastenerReuseFacts(JudgedWays Judged, ImmutableArray<FastenersOfWork> Works)
{
    public IEnumerable<UndoneJoint> Undone =>
        Works.SelectMany(work => work.Undone).DistinctBy(each => each.Joint.Id, StringComparer.Ordinal);

    public static FastenerReuseFacts Of(PartContext context)
    {
        var judged = JudgedWays.Of(context);
        return new(judged, [.. judged.All.Select(way => JudgedWork.Of(context, way)).Select(work => new FastenersOfWork(work, UndoneIn(context, work)))]);
    }

    static ImmutableArray<UndoneJoint> UndoneIn(PartContext context, JudgedWork work)
    {
        var undone = work.Stops.SelectMany(stop => stop.Undone).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. context.Case.Record.Joints.Where(joint => undone.Contains(joint.Id))
                .Select(joint => new UndoneJoint(joint, FastenerLevels.Of(context.Case, context.Part.Id, joint).Possible())),
        ];
    }
}
