using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>Article 11(7): batteries are on offer as spare parts for at least 5 years after the last unit of the model.</summary>
/// <remarks>That they are for independent professionals and end users is from memory. Years are taken as counted from the last unit.</remarks>
static class SpareBatteries
{
    // Article 11(7) (read).
    const decimal Years = 5;

    public static Requirement Of(BatteryDevice batteries) =>
        new("spare-batteries", "Art. 11(7)", () => batteries.WithInterplay(batteries.ForAll(battery => Judge(batteries, battery))));

    static Answer Judge(BatteryDevice batteries, Part battery)
    {
        Spare[] spares = [.. batteries.Record.Spares.Where(spare => batteries.GroupOf(battery).Holds(spare.Part))];
        if (spares.Length > 0) return Answer.Any(spares.Select(spare => Judge(batteries, battery, spare)));
        return batteries.Record.Spares is { IsRecorded: true, Count: 0 }
            ? Answer.Of(false, BatteryReasons.NoSpares())
            : Answer.Unknown(BatteryReasons.SpareNotListed(batteries.Case, battery));
    }

    static Answer Judge(BatteryDevice batteries, Part battery, Spare spare) => Answer.All(
        Answer.Of(spare.Years.AtLeast(Years), BatteryReasons.SpareYears(batteries.Case, battery, spare, Years)),
        Answer.Of(spare.Audience.Fits(audience => audience == Audience.Public), BatteryReasons.SpareAudience(batteries.Case, battery, spare)));
}
