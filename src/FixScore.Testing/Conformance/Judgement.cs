using FixScore.Records;

namespace FixScore.Testing;

/// <summary>What a criterion said, or how it failed.</summary>
/// <param name="Part">Id of the part judged; empty for the device.</param>
/// <param name="Outcome">The answer; <c>null</c> when it failed.</param>
/// <param name="Fault">Type and message of what it threw; <c>null</c> when it answered.</param>
readonly record struct Judgement(string Part, Outcome? Outcome, string? Fault)
{
    /// <summary>All judgements of a sample: one for the device, or one for each part.</summary>
    public static IEnumerable<Judgement> Of(ICriterion criterion, Sample sample, Scale scale, OptionValues values) => criterion switch
    {
        IDeviceCriterion device => [Of("", () => device.Judge(new(sample.Case, scale, values)))],
        IPartCriterion part => sample.Record.Parts.Select(each => Of(each.Id, () => part.Judge(Context(sample, scale, values, each)))),
        _ => [],
    };

    /// <summary>What can still come out: the score, or the whole scale when unknown. <c>null</c> when the question does not arise.</summary>
    public static Interval? PointsOf(Outcome outcome, Scale scale) => outcome.Kind switch
    {
        OutcomeKind.Scored => outcome.Score,
        OutcomeKind.Unknown => scale.Whole,
        _ => null,
    };

    static PartContext Context(Sample sample, Scale scale, OptionValues values, Part part) =>
        new(sample.Case, scale, values, part, Contexts.RolesOf(sample.Record));

    // Whatever a criterion throws is a finding about it, never a failure of the check.
    static Judgement Of(string part, Func<Outcome> judge)
    {
        try
        {
            var outcome = judge();
            return Flaw(outcome) is { } flaw ? new(part, null, flaw) : new(part, outcome, null);
        }
        catch (Exception failure)
        {
            return new(part, null, $"{failure.GetType().Name}: {failure.Message}");
        }
    }

    static string? Flaw(Outcome? outcome)
    {
        if (outcome is null) return "no outcome";
        var hollow = outcome.Reasons.IsDefault || outcome.Missing.IsDefault
            || outcome.Reasons.Any(reason => reason is null || reason.Values.IsDefault || reason.Pointers.IsDefault);
        return hollow ? "the outcome holds a list that was never made" : null;
    }
}
