using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign;

/// <summary>Whether the regulation is for the device and the day asked about.</summary>
static class EcodesignScope
{
    // Regulation (EU) 2023/1670, consolidated text of 20 June 2025 (read).
    static readonly DateOnly Start = new(2025, 6, 20);

    static readonly Pointer Device = Pointer.Root.Child("device");

    /// <summary>Why nothing of it applies; <c>null</c> when it does.</summary>
    public static Reason? WhyOutside(RequirementContext context)
    {
        var device = context.Case.Record.Device;
        if (device.Kind is not (EcodesignDevice.Smartphone or EcodesignDevice.SlateTablet))
            return Reason.Of("other-kind", "Parts B and D are for smartphones and slate tablets, not for {kind}.", [Device.Child("kind")], ("kind", device.Kind));
        if (context.Date < Start)
            return Reason.Of("before-start", "The rules apply from {start}; asked about is {date}.", [], ("start", Shown.Day(Start)), ("date", Shown.Day(context.Date)));
        return device.Released > context.Date
            ? Reason.Of("not-yet-released", "The model was released on {released}; asked about is {date}.", [Device.Child("released")],
                ("released", Shown.Day(device.Released.Value)), ("date", Shown.Day(context.Date)))
            : null;
    }

    /// <summary>Why spares are not owed yet; <c>null</c> when they are. An unknown release is taken as past.</summary>
    public static Reason? WhyNoSparesYet(RequirementContext context)
    {
        if (context.Case.Record.Device.Released is not { } released || released.AddMonths(1) <= context.Date) return null;
        return Reason.Of("spares-not-yet-due", "Spares are owed from one month after placing on the market; the model was released on {released}, asked about is {date}.",
            [Device.Child("released")], ("released", Shown.Day(released)), ("date", Shown.Day(context.Date)));
    }
}
