using System.Collections.Immutable;

namespace FixScore.Criteria.Documentation;

/// <summary>Options of <see cref="DocumentationCriterion"/>. The default points and factors are own judgement, no source.</summary>
static class DocumentationOptions
{
    public static readonly Option<ImmutableArray<string>> Subjects = Options.Words(
        "subjects",
        [
            "identification", "disassembly-instructions", "exploded-view", "wiring-diagram", "board-schematic", "component-list", "tools-list",
            "error-codes", "diagnostics", "test-procedure", "software-reset", "spare-parts-list", "safety-data", "torque-values",
        ],
        "The subjects that should be documented, each with the same weight.");

    public static readonly Option<Levels> Audience = Options.Levels(
        "audience", Levels.Of(("public", 1m), ("repairers", 0.7m), ("authorised", 0.15m), ("nobody", 0m)),
        "Points for who can get a document.");

    public static readonly Option<decimal> ReasonableFeeFactor = Options.Number(
        "reasonableFeeFactor", 0.7m, 0, 1, "1", "What a reasonable fee leaves of the points above the lowest.");

    public static readonly Option<decimal> FeeFactor = Options.Number(
        "feeFactor", 0.4m, 0, 1, "1", "What any other fee leaves of the points above the lowest.");

    public static readonly Option<decimal> YearsWanted = Options.Number(
        "yearsWanted", 7, 0, 100, "a", "Years of availability that leave all points; fewer leave their share. With 0, years do not count.");

    public static ImmutableArray<Option> All { get; } =
        [Subjects, Audience, ReasonableFeeFactor, FeeFactor, YearsWanted, Options.NoLevel];
}
