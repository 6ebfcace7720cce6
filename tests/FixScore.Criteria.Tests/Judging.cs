namespace FixScore.Criteria.Tests;

/// <summary>Runs a criterion on the scale 0 to 100 with its default options, or some of them replaced.</summary>
static class Judging
{
    public static readonly Scale Scale = new(0, 100);

    public static Outcome On(this IDeviceCriterion criterion, TeardownRecord record, params ReadOnlySpan<(Option, object)> options) =>
        criterion.Judge(new(new RecordCase(record), Scale, Values(criterion, options)));

    public static Outcome On(this IPartCriterion criterion, TeardownRecord record, string part, params ReadOnlySpan<(Option, object)> options) =>
        criterion.Judge(new(
            new RecordCase(record), Scale, Values(criterion, options), record.Parts.First(each => each.Id == part), [part]));

    /// <summary>What is known of the score: the whole scale where the answer is unknown.</summary>
    public static Interval Known(this Outcome outcome) => outcome.Kind == OutcomeKind.Unknown ? Scale.Whole : outcome.Score;

    public static Reason Because(this Outcome outcome, string code) => Assert.Single(outcome.Reasons, reason => reason.Code == code);

    /// <summary>Fails unless all pointers lead to something in the record.</summary>
    public static void PointsInto(this Outcome outcome, TeardownRecord record)
    {
        var places = Places.Of(record);
        Assert.All(outcome.Reasons.SelectMany(reason => reason.Pointers), pointer => Assert.Contains(pointer.Text, places));
        Assert.All(outcome.Missing, missing => Assert.Contains(missing.At.Text, places));
    }

    static OptionValues Values(ICriterion criterion, ReadOnlySpan<(Option Option, object Value)> options)
    {
        var values = OptionValues.DefaultsOf(criterion.Info, Scale);
        foreach (var (option, value) in options) values = values.With(option, value);
        return values;
    }
}
