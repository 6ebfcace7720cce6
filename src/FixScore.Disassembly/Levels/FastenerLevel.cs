using FixScore.Records;

namespace FixScore.Disassembly;

/// <summary>How good a fastener is for repair, best first (Regulation (EU) 2023/1669 Annex I (16) to (19)).</summary>
public enum FastenerLevel
{
    /// <summary>Can be used again for the same purpose.</summary>
    Reusable,

    /// <summary>Cannot be used again, but a new one comes with the spare part.</summary>
    Resupplied,

    /// <summary>Cannot be used again; taking it out leaves nothing that prevents reassembly.</summary>
    Removable,

    /// <summary>None of these.</summary>
    Neither,
}

/// <summary>Fastener levels of joints, seen from the part that is replaced. Thread safe.</summary>
public static class FastenerLevels
{
    /// <summary>What the level of <paramref name="joint"/> can be when <paramref name="part"/> is replaced.</summary>
    /// <remarks>
    /// A removable fastener is resupplied when the part's spare includes it: all joints of the part's group when it is said to
    /// include fasteners, others only when listed by id. Not observed reuse leaves every level open.
    /// </remarks>
    /// <exception cref="KeyNotFoundException">No part of the record has this id.</exception>
    public static OneOf<FastenerLevel> Of(TeardownCase source, string part, Joint joint)
    {
        var group = source.Derive<PartGroups>().Of(part);
        bool?[] spares = [.. source.Record.Spares.AsArray().Where(spare => group.Holds(spare.Part)).Select(spare => Includes(spare, group, joint))];
        bool? resupplied = spares.Contains(true) ? true : spares.Length > 0 && !spares.Contains(null) ? false : null;
        if (source.Record.Spares is { IsRecorded: true, Count: 0 }) resupplied = false;
        return new([.. joint.Reuse.Possible().SelectMany(reuse => Levels(reuse, resupplied)).Distinct().Order()]);
    }

    static bool? Includes(Spare spare, PartGroup group, Joint joint) => spare.Audience.Is(Audience.Nobody)
        ? false
        : spare.FastenersIncluded is { } included
            ? included.Joints.Contains(joint.Id) || (included.All && group.Joints.Any(own => own.Id == joint.Id))
            : null;

    static FastenerLevel[] Levels(Reuse reuse, bool? resupplied) => (reuse, resupplied) switch
    {
        (Reuse.Reusable, _) => [FastenerLevel.Reusable],
        (Reuse.Neither, _) => [FastenerLevel.Neither],
        (_, true) => [FastenerLevel.Resupplied],
        (_, false) => [FastenerLevel.Removable],
        _ => [FastenerLevel.Resupplied, FastenerLevel.Removable],
    };
}
