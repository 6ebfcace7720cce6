using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Reporting.Pictures;

namespace FixScore.Reporting.Reports;

/// <summary>The parts that a report tells the way to.</summary>
/// <param name="Shown">The parts, in the order of the record.</param>
/// <param name="LeftOut">How many parts of the record are not among them.</param>
/// <param name="ByRole">Whether they were chosen by role; if not, the record has no part of such a role and its first parts stand in.</param>
sealed record PriorityParts(ImmutableArray<Part> Shown, int LeftOut, bool ByRole)
{
    const int Most = 40;
    const int MostOthers = 24;

    public static PriorityParts Of(TeardownRecord record)
    {
        Part[] priority = [.. record.Parts.Where(part => PriorityRoles.All.Contains(part.Role))];
        ImmutableArray<Part> shown = priority.Length > 0 ? [.. priority.Take(Most)] : [.. record.Parts.Take(MostOthers)];
        return new(shown, record.Parts.Count - shown.Length, priority.Length > 0);
    }
}
