using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>Options of <see cref="SpareAvailabilityCriterion"/>.</summary>
static class SpareAvailabilityOptions
{
    // Order of the roles: Regulation (EU) 2023/1669 Annex IV point 5, whose five levels are 1 to 5 points: equal steps.
    static readonly Levels Default = FixScore.Levels.Of(
        ("display-assembly", 0m), ("battery", 0.25m), ("back-cover", 0.5m), ("front-camera", 0.75m), ("rear-camera", 0.75m),
        ("charging-port", 1m), ("button", 1m), ("microphone", 1m), ("speaker", 1m));

    public static readonly Option<Levels> Ladder = Options.Levels(
        "ladder", Default,
        "Roles and the points reached when their spares and those of all roles with fewer points are sold to everyone. All must be sold to professional repairers.",
        [.. Roles.Known.Except(Default.Entries.Select(level => level.Word), StringComparer.Ordinal)]);

    public static ImmutableArray<Option> All { get; } = [Ladder, Options.NoLevel];
}
