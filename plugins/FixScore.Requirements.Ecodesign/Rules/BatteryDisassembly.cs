using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(5): the battery can be replaced by end users (route i), or by professionals when it lasts long enough (route ii).</summary>
static class BatteryDisassembly
{
    public static Requirement Of(EcodesignDevice device) =>
        new("disassembly.battery", device.Article("1.1(5)"), () => device.ForAll(Roles.Battery, battery => Judge(device, battery)));

    static Answer Judge(EcodesignDevice device, Part battery)
    {
        var first = DisassemblyRule.BatteryByEndUsers.Judge(device, battery);
        if (first.IsMet) return first;
        var lasts = BatteryEndurance.Of(device, battery);
        var second = Answer.All(lasts, DisassemblyRule.ByProfessionals.Judge(device, battery));
        if (second.IsMet) return second with { Why = Answer.Together("battery-route-ii", lasts.Why, first.Why) };
        var open = Answer.Any(first, second);
        return open with { Why = Answer.Together(open.Status == FindingStatus.NotMet ? "battery-no-route" : "battery-route-unknown", first.Why, second.Why) };
    }
}
