using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Cli.Commands.Routing.Classes;

/// <summary>Classes along a route: each is that of its worst fastener, tool or operation.</summary>
sealed class WayClasses(TeardownCase source, Route route)
{
    // No existing tool or skill frees a part that is out of reach; as long as a part is within reach, one does.
    const char NotFeasible = 'E';

    static readonly LetterRange AnyTool = new('A', 'D');
    static readonly LetterRange AnySkill = new('A', 'D');

    readonly string part = route.Query.Parts[0];

    public LetterRange? Of(ClassAspect aspect) => route.Reachability switch
    {
        Reachability.Reachable => route.Ways.Select(way => Of(aspect, way)).Aggregate(Either),
        Reachability.Unreachable => OutOfReach(aspect),
        _ => null,
    };

    LetterRange? OutOfReach(ClassAspect aspect) =>
        aspect == ClassAspect.Tools || aspect == ClassAspect.Skill ? NotFeasible
        : aspect == ClassAspect.Fasteners && route.Way is not null ? 'C'
        : null;

    // Two ways, one for each end of the steps: the route can be either.
    static LetterRange? Either(LetterRange? one, LetterRange? other) => one is { } first && other is { } second ? first.Or(second) : one ?? other;

    LetterRange? Of(ClassAspect aspect, Way way) =>
        aspect == ClassAspect.Fasteners ? LetterRange.WorstOf(source.Record.Joints.Where(joint => way.Joints.Contains(joint.Id)).Select(Fastener), aspect.Whole)
        : aspect == ClassAspect.Tools ? LetterRange.WorstOf(way.Stops.Select(Tools), AnyTool)
        : aspect == ClassAspect.Environment ? LetterRange.WorstOf(way.Stops.Select(stop => Letter(stop.Operation.Environment)), aspect.Whole)
        : aspect == ClassAspect.Skill ? LetterRange.WorstOf(way.Stops.Select(stop => Letter(stop.Operation.Skill)), AnySkill)
        : null;

    LetterRange? Fastener(Joint joint) => joint.Reuse.IsUnknown ? null : LetterRange.Over(FastenerLevels.Of(source, part, joint).Possible(), level => level switch
    {
        FastenerLevel.Reusable or FastenerLevel.Resupplied => 'A',
        FastenerLevel.Removable => 'B',
        _ => 'C',
    });

    LetterRange? Tools(Stop stop) => !stop.Tools.IsRecorded ? null
        : LetterRange.WorstOf(source.Record.Tools.Where(tool => stop.Tools.Contains(tool.Id)).Select(Tool), AnyTool);

    LetterRange? Tool(Tool tool) => LetterRange.Over(ToolLevels.Of(source, part, tool).Possible(), level => level switch
    {
        ToolLevel.Specialised => 'B',
        ToolLevel.Commercial => 'C',
        ToolLevel.Proprietary => 'D',
        _ => 'A',
    });

    static LetterRange? Letter<T>(OneOf<T> word) where T : struct, Enum =>
        word.IsUnknown ? null : LetterRange.Over(word.Stated, each => (char)('A' + Word.All<T>().IndexOf(Word.Of(each))));
}
