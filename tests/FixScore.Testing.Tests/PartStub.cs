namespace FixScore.Testing.Tests;

/// <summary>A part criterion of whether a part is serialised; tests replace how it judges.</summary>
sealed class PartStub(Func<PartContext, Outcome> judge) : IPartCriterion
{
    public static PartStub Good { get; } = new(Unserialised);

    public CriterionInfo Info { get; } = new("acme.serialised", 1, "Serialised", "whether the maker must be notified", "word",
        Direction.LessIsBetter, "own judgement, no source", ["parts[].serialised", "parts[].serialised.notify"], []);

    public Outcome Judge(PartContext context) => judge(context);

    public static Outcome Unserialised(PartContext context)
    {
        var at = context.Case.At(context.Part);
        if (context.Part.Inert) return Outcome.NotApplicable(Reason.Of("inert", "The part carries no code.", [at]));
        if (context.Part.Serialised is not { Notify: { IsExact: true } notify })
            return Outcome.Unknown(new Missing(at.Child("serialised"), "whether it is serialised"));
        return Outcome.Scored(context.Scale.At(notify.Is(Records.SerialAction.None) ? 1 : 0),
            Reason.Of("notify", "Notification: {how}.", [at.Child("serialised").Child("notify")], ("how", Word.Of(notify.Stated[0]))));
    }
}
