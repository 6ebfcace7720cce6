using System.Collections.Immutable;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>Article 11(2) and (3): devices of which the battery may be kept for independent professionals, or need not come out at all.</summary>
/// <remarks>Not a duty: not applicable when the battery is readily removable or the device is of a kind it cannot be for; else unknown, never met.</remarks>
static class Derogations
{
    // Phones, tablets and laptops are not made to work mainly in water and are no medical devices (our reading).
    static readonly ImmutableArray<string> DryAndNotMedical = ["smartphone", "slate-tablet", "laptop"];

    public static IEnumerable<Requirement> Of(BatteryDevice batteries) =>
    [
        Of(batteries, "derogation-wet-use", "Art. 11(2)(a)", DryAndNotMedical,
            "the appliance works mainly in splashing or streaming water or immersed, is meant to be washed or rinsed, and safety needs the derogation"),
        Of(batteries, "derogation-medical", "Art. 11(2)(b)", DryAndNotMedical, "this is a professional medical imaging, radiotherapy or in-vitro diagnostic device"),
        Of(batteries, "derogation-continuous-power", "Art. 11(3)", [],
            "power must not be interrupted and the battery must stay connected, for safety or for the integrity of data that the product mainly collects and supplies"),
    ];

    static Requirement Of(BatteryDevice batteries, string rule, string article, ImmutableArray<string> notFor, string what) => new(rule, article, () =>
        ReadilyRemovable.Judge(batteries) is { Status: FindingStatus.Met or FindingStatus.NotApplicable } enough ? Answer.NotApplicable(BatteryReasons.NotNeeded(enough.Why))
        : notFor.Contains(batteries.Record.Device.Kind) ? Answer.NotApplicable(BatteryReasons.NotOfKind(batteries.Record.Device.Kind))
        : Answer.Unknown(BatteryReasons.DerogationOpen(what)));
}
