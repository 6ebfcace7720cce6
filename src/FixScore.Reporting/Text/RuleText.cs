using System.Collections.Immutable;

namespace FixScore.Reporting;

/// <summary>A criterion's rule in words: what it measures, where it comes from, its options in force.</summary>
/// <param name="shown">How numbers are written.</param>
public sealed class RuleText(Shown shown)
{
    /// <summary>What the criterion measures, which way is better, and its source.</summary>
    public static string Of(CriterionInfo info) =>
        $"{info.Id}, rule {info.RuleVersion}: {info.Measures}. {(info.Direction == Direction.MoreIsBetter ? "More" : "Less")} is better. Source: {info.Source}.";

    /// <summary>The options in force, one line each.</summary>
    public IEnumerable<string> Options(OptionValues options) =>
        options.All.Select(pair => $"{pair.Key.Name}{(pair.Key.Unit is { } unit ? $" ({unit})" : "")}: {Value(pair.Key, pair.Value)}");

    string Value(Option option, object value) => value switch
    {
        Bands bands => string.Join(", ", bands.Entries.Select(band => $"{Limit(bands.Form, band.Limit)} {shown.Number(band.Points)}")),
        Levels levels => string.Join(", ", levels.Entries.Select(level => $"{level.Word} {shown.Number(level.Points)}")),
        decimal number => shown.Number(number),
        bool flag => flag ? "yes" : "no",
        ImmutableArray<string> words => string.Join(", ", words),
        int count => shown.Number(count),
        _ => ((IChoiceOption)option).WordOf(value),
    };

    string Limit(BandForm form, decimal limit) => form switch
    {
        BandForm.AtMost => $"up to {shown.Number(limit)} gives",
        BandForm.AtLeast => $"from {shown.Number(limit)} gives",
        _ => $"{shown.Number(limit)} gives",
    };
}
