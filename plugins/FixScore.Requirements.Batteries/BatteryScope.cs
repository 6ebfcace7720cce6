using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>Whether Article 11 is for the day asked about.</summary>
static class BatteryScope
{
    // Article 96(2)(a) (read).
    static readonly DateOnly Start = new(2027, 2, 18);

    /// <summary>Why nothing of it applies; <c>null</c> when it does.</summary>
    public static Reason? WhyOutside(RequirementContext context)
    {
        if (context.Date < Start)
            return Reason.Of("before-start", "Article 11 applies from {start} (Article 96(2)(a)); asked about is {date}.", [],
                ("start", Shown.Day(Start)), ("date", Shown.Day(context.Date)));
        return context.Case.Record.Device.Released is { } released && released > context.Date
            ? Reason.Of("not-yet-released", "The model was released on {released}; asked about is {date}.", [Pointer.Root.Child("device").Child("released")],
                ("released", Shown.Day(released)), ("date", Shown.Day(context.Date)))
            : null;
    }
}
