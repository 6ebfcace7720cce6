using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(7): who replaces a serialised part gets the means to make it work fully, within 3 working days.</summary>
/// <remarks>
/// Notification and authorisation have to be possible remotely; both on the device and with the maker's server they are, so
/// that is never what fails. Whether the owner alone is asked is not in a record.
/// </remarks>
static class SerialisedParts
{
    // Annex II B and D 1.1(7), consolidated text of 20 June 2025 (read).
    const decimal Days = 3;

    public static IEnumerable<Requirement> Of(EcodesignDevice device) => ListedParts.All.Select(role =>
        new Requirement($"serialised-parts.{role}", device.Article("1.1(7)"), () => ListedParts.Judge(device, role, part => Judge(device, part))));

    static Answer Judge(EcodesignDevice device, Part part)
    {
        var reasons = new SerialisedReasons(device.Case, part);
        if (part.Inert) return Answer.NotApplicable(reasons.Inert());
        if (part.Serialised is not { } demands) return Answer.Unknown(reasons.NotRecorded());
        var serialised = Known.Any(demands.Notify.Fits(Asks), demands.Authorise.Fits(Asks));
        if (serialised == false) return Answer.NotApplicable(reasons.NotSerialised());
        var access = Answer.All(Access(device, part, demands, reasons), Answer.Of(demands.AccessDays.AtMost(Days), reasons.Days(Days))).WhenMet(reasons.Access());
        return serialised is null && !access.IsMet ? Answer.Unknown(reasons.NotRecorded()) : access;
    }

    static bool Asks(SerialAction action) => action != SerialAction.None;

    static Answer Access(EcodesignDevice device, Part part, Serialisation demands, SerialisedReasons reasons)
    {
        var professionals = Answer.Of(demands.Audience.Fits(audience => audience is Audience.Public or Audience.Repairers), reasons.Audience("professional repairers"));
        if (!ListedParts.EndUsers.Contains(part.Role)) return professionals;
        var everyone = Answer.Of(demands.Audience.Fits(audience => audience is Audience.Public), reasons.Audience("professional repairers and end users"));
        return ListedParts.UnlessLasting(device, part, everyone, _ => professionals);
    }
}
