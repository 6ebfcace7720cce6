using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign;

/// <summary>Whether a battery lasts long enough to be kept for professionals, 1.1(1)(c) and 1.1(5): endurance and ingress protection.</summary>
static class BatteryEndurance
{
    // Annex II B and D 1.1(1)(c), 1.1(5), consolidated text of 20 June 2025 (read).
    const decimal PercentAfter500Cycles = 83, CyclesTo80Percent = 1000;
    static readonly (int Dust, int Water) Phone = (6, 7), Tablet = (4, 2);

    public static Answer Of(EcodesignDevice device, Part battery) => Answer.All(
        Capacity(device.Case, battery), Cycles(device.Case, battery), Ingress(device)).WhenMet(Reason.Of(
        "battery-lasts", "{part} keeps 83 % after 500 cycles and 80 % after 1000, and the device is protected as asked.",
        [device.Case.At(battery), Pointer.Root.Child("device")], ("part", Shown.Of(battery))));

    static Answer Capacity(TeardownCase source, Part battery)
    {
        var percent = PercentLeft(Find(battery, "capacity-after-500-cycles"), Find(battery, "rated-capacity"));
        return Answer.Of(percent.AtLeast(PercentAfter500Cycles), Reason.Of(
            "capacity-after-500-cycles", "{part} keeps {percent} of its rated capacity after 500 cycles; {limit} is asked.",
            [source.At(battery)], ("part", Shown.Of(battery)), ("percent", Shown.Of(percent, "%")), ("limit", Value.Of(PercentAfter500Cycles, "%"))));
    }

    static Answer Cycles(TeardownCase source, Part battery)
    {
        var cycles = Find(battery, "cycles-to-80-percent")?.Value;
        return Answer.Of(cycles.AtLeast(CyclesTo80Percent), Reason.Of(
            "cycles-to-80-percent", "{part} falls to 80 % after {cycles}; {limit} are asked.",
            [source.At(battery)], ("part", Shown.Of(battery)), ("cycles", Shown.Of(cycles, "cycles")), ("limit", Value.Of(CyclesTo80Percent, "cycles"))));
    }

    public static Answer Ingress(EcodesignDevice device)
    {
        var (dust, water) = device.IsTablet ? Tablet : Phone;
        var code = device.Record.Device.IngressProtection;
        return Answer.Of(IngressCode.Of(code).Reaches(dust, water), Reason.Of(
            "ingress-protection", "The ingress protection is {code}; {limit} is asked.",
            [Pointer.Root.Child("device")], ("code", code ?? "unknown"), ("limit", $"IP{dust}{water}")));
    }

    static Spec? Find(Part battery, string name) => battery.Specs.FirstOrDefault(spec => spec.Name == name);

    static Quantity? PercentLeft(Spec? left, Spec? rated)
    {
        if (left is null or { Unit: "%" }) return left?.Value;
        if (rated?.Unit != left.Unit) return null;
        return new Quantity(Share(left.Value.Min, rated.Value.Max), Share(left.Value.Max, rated.Value.Min));
    }

    static decimal? Share(decimal? part, decimal? whole) => whole > 0 ? part / whole * 100 : null;
}
