using FixScore.Disassembly;

namespace FixScore.Criteria.Disassembly;

/// <summary>Which way to the part is judged; the words of option <c>route</c>.</summary>
enum JudgedRoute
{
    Shortest,
    Maker,
    Assessor,
}

/// <summary>Where the judged work begins; the words of option <c>from</c>.</summary>
enum WorkFrom
{
    /// <summary>With the closed device.</summary>
    Start,

    /// <summary>After the last removal of another part of the roles that are judged.</summary>
    Previous,
}

/// <summary>Options that the criteria of this family share.</summary>
static class WayOptions
{
    public static Option<JudgedRoute> Route { get; } = Options.Choice(
        "route", JudgedRoute.Shortest,
        "Which way to the part is judged: the shortest, or the one that the maker or the assessor recorded (of several the shortest); without one, the shortest.");

    public static Option<FirstTool> FirstTool { get; } = Options.Choice(
        "firstTool", FixScore.Disassembly.FirstTool.NoChange,
        "Whether the first tool, taken up while a step is open and nothing is in hand, is a change of tool.");

    public static Option<WorkFrom> From { get; } = Options.Choice(
        "from", WorkFrom.Start,
        "Whether the work counts from the closed device, or only after the previous removal of another part of the roles that are judged.");
}
