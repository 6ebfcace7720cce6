using System.Collections.Immutable;
using FixScore.Disassembly.Model;
using FixScore.Records;

namespace FixScore.Disassembly.Search;

/// <summary>What the record leaves out about a part, so that its route is unknown, or about the way to it, so that there is none.</summary>
static class Gaps
{
    /// <summary>Why nothing is known of the way to one of the groups; <c>null</c> when the search can tell.</summary>
    public static (Reachability Reachability, Reason Why)? Of(TeardownCase source, Teardown teardown, int[] groups)
    {
        var gaps = groups.Select(group => (Group: teardown.Structure.Groups[group], Why: Of(source, teardown, group))).Where(gap => gap.Why is not null).ToArray();
        if (gaps.SelectMany(gap => gap.Group.Parts).FirstOrDefault(part => part.Reach.Is(Records.Reach.NotPossible)) is { } closed)
            return (Reachability.Unreachable, RouteReasons.NotPossible(source, closed));
        return gaps is [var first, ..] ? (Reachability.Unknown, first.Why!) : null;
    }

    /// <summary>What is missing on the way to a goal that nothing reaches: facts that no operation brings about.</summary>
    public static Reason Missing(TeardownCase source, Teardown teardown, Need goal, RouteQuery query)
    {
        var possible = teardown.Possible(_ => false);
        var holds = teardown.Holding(possible);
        var (missing, seen, open) = (new List<Want>(), new Bits(teardown.Works.Length), new Stack<Need>([goal]));
        while (open.TryPop(out var next))
            foreach (var fact in Teardown.Open(next, holds))
            {
                if (fact.By.Length == 0) missing.Add(fact.Want);
                foreach (var work in fact.By.Where(seen.Add)) open.Push(teardown.Works[work].Needs);
            }
        return RouteReasons.NoWay(source, query, [.. missing.Distinct()]);
    }

    static Reason? Of(TeardownCase source, Teardown teardown, int group)
    {
        var parts = teardown.Structure.Groups[group];
        if (!source.Record.Joints.IsRecorded || !source.Record.Operations.IsRecorded) return RouteReasons.ListsUnknown(source, parts.Parts[0]);
        var joints = teardown.Structure.Crossing(teardown.Structure.Along([group])).Where(joint => teardown.Structure.Sides(joint).Contains(group)).ToArray();
        var open = joints.Where(joint => teardown.Structure.Joints[joint].Kind != JointKind.Contact && teardown.Effects.Undoing(joint).Length == 0).ToArray();
        if (open.Length > 0) return RouteReasons.NothingUndoes(source, parts.Parts[0], [.. open.Select(joint => teardown.Structure.Joints[joint])]);
        return parts.Joints.IsEmpty && !IsNamed(teardown, parts) ? RouteReasons.NotDescribed(source, parts.Parts[0]) : null;
    }

    static bool IsNamed(Teardown teardown, PartGroup group) =>
        teardown.Works.Any(work => work.Operation.Removes.Concat(work.Operation.Moves).Any(group.Holds));
}
