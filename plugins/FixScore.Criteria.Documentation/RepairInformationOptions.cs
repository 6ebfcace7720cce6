using System.Collections.Immutable;

namespace FixScore.Criteria.Documentation;

/// <summary>Options of <see cref="RepairInformationCriterion"/>.</summary>
static class RepairInformationOptions
{
    // Regulation (EU) 2023/1670 Annex II B and D 1.1(2)(e), as far as records have subjects for it.
    public static readonly Option<ImmutableArray<string>> Subjects = Options.Words(
        "subjects",
        [
            "identification", "disassembly-instructions-or-exploded-view", "wiring-diagram", "board-schematic", "tools-list",
            "error-codes", "diagnostics", "software-reset", "failure-records", "repairer-registration",
        ],
        "The subjects that must all be available. One written a-or-b is met by either.");

    // Regulation (EU) 2023/1669 Annex IV point 5: board diagrams need not be public.
    public static readonly Option<ImmutableArray<string>> BoardSubjects = Options.Words(
        "boardSubjects", ["board-schematic"], "Subjects that count as public and free when professional repairers get them free.");

    // Regulation (EU) 2023/1669 Annex IV point 5: 5, 3 and 1 points.
    public static readonly Option<Levels> Levels = Options.Levels(
        "levels", FixScore.Levels.Of(("public-free", 1m), ("professionals-free", 0.5m), ("professionals-reasonable-fee", 0m)),
        "Points for who gets all subjects at what cost.");

    public static ImmutableArray<Option> All { get; } = [Subjects, BoardSubjects, Levels, Options.NoLevel];
}
