using FixScore.Disassembly;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign;

/// <summary>Whether the back cover has to be taken off, not just moved, to replace the battery.</summary>
static class BatteryCover
{
    public static Answer MustComeOff(EcodesignDevice device, Part cover)
    {
        var batteries = device.Record.Parts.Where(part => part.Role == Roles.Battery).ToArray();
        return batteries.Length == 0
            ? Answer.Unknown(PartReasons.NotRecorded(Roles.Battery))
            : Answer.Any(batteries.Select(battery => MustComeOff(device, cover, battery)));
    }

    static Answer MustComeOff(EcodesignDevice device, Part cover, Part battery)
    {
        var carriers = CarriersOf(device.Case, cover).ToArray();
        var leavesCover = new Aspect("cover-stays", operation => !operation.Removes.Any(carriers.Contains), operation => operation.Id);
        var ways = Ways.To(device.Case, battery.Id, [leavesCover], device.Cancellation);
        return ways.Reachability == Reachability.Reachable
            ? Answer.Of(!ways.Exists, PartReasons.Cover(device.Case, cover, battery, ways))
            : Answer.Unknown(WayAnswers.Unknown(device.Case, battery));
    }

    /// <summary>Ids of parts that take the cover along: its group, and whatever that rides on.</summary>
    static IEnumerable<string> CarriersOf(TeardownCase source, Part cover)
    {
        for (var next = cover; next is not null; next = source.Record.Parts.FirstOrDefault(part => part.Id == next.On))
            foreach (var each in source.Derive<PartGroups>().Of(next.Id).Parts) yield return each.Id;
    }
}
