using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign;

/// <summary>The parts that the regulation lists in 1.1(1)(a), for professional repairers, and 1.1(1)(c), for end users as well.</summary>
static class ListedParts
{
    public const string BackCover = "back-cover", Hinge = "hinge", ProtectiveFoil = "protective-foil", Charger = "charger", SimTray = "sim-tray";

    /// <summary>List (a).</summary>
    public static readonly ImmutableArray<string> Professionals =
        [Roles.Battery, "front-camera", "rear-camera", "external-audio-connector", "charging-port", "button", "microphone", "speaker", Hinge];

    /// <summary>List (c).</summary>
    public static readonly ImmutableArray<string> EndUsers = [Roles.Battery, Roles.DisplayAssembly, BackCover, ProtectiveFoil, Charger, SimTray];

    /// <summary>Both lists, each role once.</summary>
    public static readonly ImmutableArray<string> All = [.. Professionals, .. EndUsers.Remove(Roles.Battery)];

    /// <summary>The answer for a listed role: a cover only where it must come off for the battery, a charger only where none is common.</summary>
    public static Answer Judge(EcodesignDevice device, string role, Func<Part, Answer> judge) => role switch
    {
        BackCover => device.ForAll(role, part => IfListed(BatteryCover.MustComeOff(device, part), judge(part))),
        ProtectiveFoil when !device.Record.Device.Foldable => Answer.NotApplicable(PartReasons.NotFoldable(role)),
        Charger => device.ForAll(role, part => IfOwed(judge(part))),
        _ => device.ForAll(role, judge),
    };

    /// <summary>The answer for a battery that is in list (c) unless it lasts long enough: then another answer holds.</summary>
    public static Answer UnlessLasting(EcodesignDevice device, Part battery, Answer listed, Func<Answer, Answer> whenLasting)
    {
        if (battery.Role != Roles.Battery || listed.IsMet) return listed;
        var lasts = BatteryEndurance.Of(device, battery);
        return lasts.Status switch
        {
            FindingStatus.Met => whenLasting(lasts),
            FindingStatus.Unknown => Answer.Unknown(Answer.Together("battery-exemption-unknown", listed.Why, lasts.Why)),
            _ => listed,
        };
    }

    static Answer IfOwed(Answer judged) => judged.Status == FindingStatus.NotMet ? Answer.Unknown(PartReasons.ChargerOpen(judged.Why)) : judged;

    static Answer IfListed(Answer listed, Answer judged) => listed.Status switch
    {
        FindingStatus.Met => judged,
        FindingStatus.NotMet => Answer.NotApplicable(listed.Why),
        _ => judged.IsMet ? judged : listed,
    };
}
