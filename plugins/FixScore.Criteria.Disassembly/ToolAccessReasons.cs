using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Disassembly;

/// <summary>What <see cref="ToolAccessCriterion"/> says.</summary>
static class ToolAccessReasons
{
    public static IEnumerable<Reason> Of(PartContext context, ToolAccessFacts facts) =>
    [
        .. facts.Works.Select(each => WayReasons.Of(context, facts.Judged, each.Work)),
        .. WayReasons.Of(context, facts.Judged),
        .. facts.Used.Select(each => Used(context, each)),
        .. facts.Unknown.Select(each => Unknown(context, each)),
        .. facts.Works.Any(each => each.Used.IsEmpty && each.Unknown.IsEmpty) ? [BareHands(context)] : Array.Empty<Reason>(),
    ];

    public static IEnumerable<Missing> Missing(PartContext context, ToolAccessFacts facts)
    {
        foreach (var operation in facts.Unknown) yield return new(context.Case.At(operation), "tools");
        foreach (var (tool, possible) in facts.Used)
            if (possible.Length > 1) yield return new(context.Case.At(tool), "class");
    }

    static Reason Used(PartContext context, UsedTool each) => Reason.Of(
        "tool", "Tool {tool}, used for part {part}, is {level}.", [context.Case.At(each.Tool)],
        ("tool", each.Tool.Id), ("part", context.Part.Id), ("level", string.Join(" or ", each.Possible.Select(Word.Of))))
        with { Points = ToolAccessCriterion.PointsOf(context, each.Possible) };

    static Reason Unknown(PartContext context, Operation operation) => Reason.Of(
        "tools-unknown", "With what {operation} is done was not observed.", [context.Case.At(operation)], ("operation", operation.Id))
        with { Points = ToolAccessCriterion.PointsOf(context, Enum.GetValues<ToolLevel>()) };

    static Reason BareHands(PartContext context) => Reason.Of(
        "bare-hands", "Part {part} comes free with bare hands.", [context.Case.At(context.Part)], ("part", context.Part.Id))
        with { Points = ToolAccessCriterion.PointsOf(context, [ToolLevel.None]) };
}
