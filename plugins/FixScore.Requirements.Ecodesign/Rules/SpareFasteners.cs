using FixScore.Disassembly;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(1): fasteners that have to be undone to reach the part come along with the spare unless they can be used again.</summary>
static class SpareFasteners
{
    public static Answer Judge(EcodesignDevice device, Part part, Spare spare)
    {
        var group = device.Case.Derive<PartGroups>().Of(part.Id);
        var joints = device.Record.Joints.ToDictionary(joint => joint.Id, StringComparer.Ordinal);
        var ways = Ways.To(device.Case, part.Id, [new("fasteners", Keeps, Seen)], device.Cancellation);
        return ways.Reachability == Reachability.Reachable
            ? Answer.Of(ways.Exists, new SpareReasons(device.Case, part, spare).Fasteners(ways, Seen))
            : Answer.Unknown(WayAnswers.Unknown(device.Case, part));

        bool? Keeps(Operation operation) => Known.All(operation.Undoes.Select(id => Supplied(joints[id])));

        string Seen(Operation operation) => string.Join(", ", operation.Undoes.Where(id => Supplied(joints[id]) != true));

        bool? Supplied(Joint joint) => joint.Integral ? true : Known.Any(joint.Reuse.Fits(reuse => reuse == Reuse.Reusable), Included(spare, group, joint));
    }

    static bool? Included(Spare spare, PartGroup group, Joint joint) => spare.FastenersIncluded is { } included
        ? included.Joints.Contains(joint.Id) || (included.All && group.Joints.Any(own => own.Id == joint.Id))
        : null;
}
