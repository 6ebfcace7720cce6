using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Disassembly;

/// <summary>The part of a way that is judged.</summary>
/// <param name="Stops">The operations judged, in order.</param>
/// <param name="Previous">The removal they come after; <c>null</c> when they begin with the closed device.</param>
/// <param name="PreviousPart">The part taken with it that counts; <c>null</c> likewise.</param>
sealed record JudgedWork(ImmutableArray<Stop> Stops, Stop? Previous = null, Part? PreviousPart = null)
{
    public static JudgedWork Of(PartContext context, Way way)
    {
        // The last operation is what frees the part: whatever else it takes out was not out before.
        for (var i = way.Stops.Length - 2; context.Get(WayOptions.From) == WorkFrom.Previous && i >= 0; i--)
            if (Counting(context, way.Stops, i) is { } part) return new(way.Stops[(i + 1)..], way.Stops[i], part);
        return new(way.Stops);
    }

    /// <summary>A part of the judged roles that the operation takes and none removed before, neither replaced with the target nor merely riding out on it.</summary>
    static Part? Counting(PartContext context, ImmutableArray<Stop> stops, int at)
    {
        var group = context.Case.Derive<PartGroups>().Of(context.Part.Id);
        var takesTarget = stops[at].Taken.Any(group.Holds);
        return context.Case.Record.Parts.FirstOrDefault(part =>
            context.Roles.Contains(part.Role) && stops[at].Taken.Contains(part.Id) && !group.Holds(part.Id)
            && !(takesTarget && Goes(context.Case, part, group.Holds))
            && !stops[..at].Any(earlier => Removes(context.Case, earlier, part)));
    }

    static bool Removes(TeardownCase source, Stop stop, Part part)
    {
        PartGroup[] removed = [.. stop.Operation.Removes.Select(source.Derive<PartGroups>().Of)];
        return Goes(source, part, id => removed.Any(group => group.Holds(id)));
    }

    /// <summary>Whether a part, or one that it rides on, is among others.</summary>
    static bool Goes(TeardownCase source, Part part, Func<string, bool> among)
    {
        var next = part;
        for (var i = 0; next is not null && i < source.Record.Parts.Count; i++)
        {
            if (among(next.Id)) return true;
            next = source.Record.Parts.FirstOrDefault(each => each.Id == next.On);
        }
        return false;
    }
}
