using System.Text.RegularExpressions;

namespace FixScore.Testing;

/// <summary>Laws that each single answer keeps.</summary>
static partial class OutcomeLaws
{
    public static void Check(Bench bench, Sample sample, Scale scale, Outcome outcome)
    {
        CheckScore(bench, sample, scale, outcome);
        CheckExplained(bench, sample, outcome);
        foreach (var reason in outcome.Reasons) CheckReason(bench, sample, reason);
        foreach (var missing in outcome.Missing) CheckMissing(bench, sample, missing);
    }

    static void CheckScore(Bench bench, Sample sample, Scale scale, Outcome outcome)
    {
        if (outcome.Kind == OutcomeKind.Scored && !scale.Whole.Contains(outcome.Score))
            bench.Report(ConformanceCodes.OutsideScale, sample.Name, "The score {score} leaves the scale {scale}.",
                ("score", outcome.Score), ("scale", scale.Whole));
    }

    static void CheckExplained(Bench bench, Sample sample, Outcome outcome)
    {
        if (outcome.Kind == OutcomeKind.Unknown)
        {
            if (outcome.Missing.IsDefaultOrEmpty)
                bench.Report(ConformanceCodes.UnknownWithoutMissing, sample.Name, "An unknown answer does not say what is missing.");
        }
        else if (outcome.Reasons.IsDefaultOrEmpty)
        {
            bench.Report(ConformanceCodes.Unexplained, sample.Name, "The answer {kind} has no reasons.", ("kind", Word.Of(outcome.Kind)));
        }
    }

    public static void CheckReason(Bench bench, Sample sample, Reason reason)
    {
        if (!RecordIds.IsSlug(reason.Code))
            bench.Report(ConformanceCodes.ReasonMalformed, sample.Name, "The code '{code}' is not a slug.", ("code", reason.Code));
        foreach (Match name in Braced().Matches(reason.Template))
            if (reason.Values.All(value => value.Name != name.Groups[1].Value))
                bench.Report(ConformanceCodes.ReasonMalformed, sample.Name, "The reason '{code}' has no value '{name}'.",
                    ("code", reason.Code), ("name", name.Groups[1].Value));
        foreach (var pointer in reason.Pointers.Where(pointer => !sample.Walker.Exists(pointer)))
            bench.Report(ConformanceCodes.PointsNowhere, sample.Name, "The reason '{code}' points at '{pointer}', which the record does not have.",
                ("code", reason.Code), ("pointer", pointer.Text));
    }

    static void CheckMissing(Bench bench, Sample sample, Missing missing)
    {
        if (!sample.Walker.CouldExist(missing.At))
            bench.Report(ConformanceCodes.PointsNowhere, sample.Name, "'{what}' is said to be missing at '{pointer}', which no record can have.",
                ("what", missing.What), ("pointer", missing.At.Text));
    }

    [GeneratedRegex("{([A-Za-z][A-Za-z0-9]*)}", RegexOptions.CultureInvariant)]
    private static partial Regex Braced();
}
