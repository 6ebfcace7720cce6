using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Reporting.Pictures;

/// <summary>Which parts are drawn: all of a small record; of a large one those on the routes, the rest is counted.</summary>
static class DrawnParts
{
    /// <summary>The most parts that are drawn; more are no picture any longer.</summary>
    public const int Most = 40;

    /// <summary>The parts to draw, in the order of the record.</summary>
    public static ImmutableArray<Part> Of(TeardownRecord record, ImmutableArray<PictureRoute> routes, ImmutableArray<RouteTarget> targets)
    {
        if (record.Parts.Count <= Most) return record.Parts.AsArray();
        var wanted = targets.Select(target => target.Part.Id)
            .Concat(routes.SelectMany(route => route.Visits).CountBy(visit => visit.Part, StringComparer.Ordinal).OrderByDescending(count => count.Value).Select(count => count.Key))
            .Distinct(StringComparer.Ordinal).Take(Most).ToHashSet(StringComparer.Ordinal);
        // Where nothing is asked for there is no route to keep to, and the first parts stand for the others.
        return wanted.Count == 0 ? [.. record.Parts.Take(Most)] : [.. record.Parts.Where(part => wanted.Contains(part.Id))];
    }
}
