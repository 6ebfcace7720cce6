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
            if (Counting(context, way.Stops[i]) is { } part) return new(way.Stops[(i + 1)..], way.Stops[i], part);
        return new(way.Stops);
    }

    /// <summary>A part of the judged roles that the operation takes, neither replaced with the target nor merely riding out on it.</summary>
    static Part? Counting(PartContext context, Stop stop)
    {
        var group = context.Case.Derive<PartGroups>().Of(context.Part.Id);
        var takesTarget = stop.Taken.Any(group.Holds);
        return context.Case.Record.Parts.FirstOrDefault(part =>
            context.Roles.Contains(part.Role) && stop.Taken.Contains(part.Id) && !group.Holds(part.Id)
            && !(takesTarget && Rides(context.Case.Record, part, group)));
    }

    static bool Rides(TeardownRecord record, Part part, PartGroup group)
    {
        var carrier = part.On;
        for (var i = 0; carrier is not null && i < record.Parts.Count; i++)
        {
            if (group.Holds(carrier)) return true;
            carrier = record.Parts.FirstOrDefault(each => each.Id == carrier)?.On;
        }
        return false;
    }
}
