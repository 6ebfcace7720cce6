using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>B 1.2(6), D 1.2(5): operating system updates, if provided, are for all units for at least 5 years after end of placement.</summary>
/// <remarks>Years counted from release or purchase are no more than those after the end of placement can be missing: too few fail, enough are unknown.</remarks>
static class SystemUpdates
{
    // Annex II B 1.2(6) and D 1.2(5), consolidated text of 20 June 2025 (read).
    const decimal Years = 5;

    public static IEnumerable<Requirement> Of(EcodesignDevice device) =>
    [
        Of(device, "security", support => support.SecurityUpdateYears),
        Of(device, "corrective", support => support.CorrectiveUpdateYears),
        Of(device, "functionality", support => support.FunctionalityUpdateYears),
    ];

    static Requirement Of(EcodesignDevice device, string kind, Func<Support, Quantity?> years) =>
        new($"system-updates.{kind}", device.Article("1.2(6)", "1.2(5)"), () => Judge(device.Record.Support, kind, years));

    static Answer Judge(Support? support, string kind, Func<Support, Quantity?> yearsOf)
    {
        if (support is null || yearsOf(support) is not { } years) return Answer.Unknown(SystemUpdateReasons.NotRecorded(kind));
        if (years.Max == 0) return Answer.NotApplicable(SystemUpdateReasons.NotProvided(kind));
        var enough = ((Quantity?)years).AtLeast(Years);
        if (enough == false) return years.Min > 0
            ? Answer.Of(false, SystemUpdateReasons.Years(support, kind, years, Years))
            : Answer.Unknown(SystemUpdateReasons.MaybeNotProvided(support, kind, years, Years));
        return Answer.Of(Known.All(enough, support.CountedFrom.Fits(from => from == CountedFrom.EndOfPlacement) == true ? true : null),
            SystemUpdateReasons.Years(support, kind, years, Years));
    }
}
