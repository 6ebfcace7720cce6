using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Safety;

/// <summary>A hazard that is met.</summary>
/// <param name="Words">What it can be; at least one of these.</param>
/// <param name="By">The operation, tool or part that brings it.</param>
sealed record Exposure(ImmutableArray<string> Words, NamedEntry By)
{
    public static IEnumerable<Exposure> Listed(EntryList<Hazard> hazards, NamedEntry by) =>
        hazards.Select(hazard => new Exposure([Word.Of(hazard)], by));
}
