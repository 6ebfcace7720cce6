using System.Collections.Immutable;

namespace FixScore.Reporting;

/// <summary>A criterion's rule in words: what it measures, where it comes from, its options. Thread safe.</summary>
/// <param name="shown">How numbers are written.</param>
public sealed class RuleText(Shown shown)
{
    /// <summary>What the criterion measures, which way is better, and its source.</summary>
    public string Of(CriterionInfo info) =>
        $"{info.Id}, rule {shown.Number(info.RuleVersion)}: {info.Measures}. {(info.Direction == Direction.MoreIsBetter ? "More" : "Less")} is better. Source: {info.Source}.";

    /// <summary>The options in force, one line each.</summary>
    public IEnumerable<string> Options(OptionValues options) => options.All.Select(pair => $"{pair.Key.Name}: {Value(pair.Key, pair.Value)}");

    /// <summary>What an option takes.</summary>
    public string Kind(Option option) => option switch
    {
        NumberOption number => $"number from {shown.Number(number.Min)} to {shown.Number(number.Max)}{Unit(option)}",
        CountOption count => $"whole number from {shown.Number(count.Min)} to {shown.Number(count.Max)}{Unit(option)}",
        FlagOption => "yes or no",
        BandsOption => $"points for bands{(Unit(option) is { Length: > 0 } unit ? $" in{unit}" : "")}",
        LevelsOption levels => $"points for words: {string.Join(", ", levels.Words)}",
        WordsOption => "list of words",
        _ => $"one of {string.Join(", ", ((IChoiceOption)option).Words)}",
    };

    /// <summary>The value of an option.</summary>
    public string Value(Option option, object value) => value switch
    {
        Bands bands => $"{string.Join(", ", bands.Entries.Select(band => $"{Limit(bands.Form, band.Limit)}{Unit(option)} gives {shown.Number(band.Points)}"))}{(bands.Form == BandForm.At ? ", straight lines between" : "")}",
        Levels levels => string.Join(", ", levels.Entries.Select(level => $"{level.Word} gives {shown.Number(level.Points)}")),
        decimal number => shown.Number(number) + Unit(option),
        int count => shown.Number(count) + Unit(option),
        bool flag => flag ? "yes" : "no",
        ImmutableArray<string> words => string.Join(", ", words),
        _ => ((IChoiceOption)option).WordOf(value),
    };

    // The unit 1 says that there is none (ISO 80000-1).
    static string Unit(Option option) => option.Unit is null or "1" ? "" : $" {option.Unit}";

    string Limit(BandForm form, decimal limit) => form switch
    {
        BandForm.AtMost => $"up to {shown.Number(limit)}",
        BandForm.AtLeast => $"from {shown.Number(limit)}",
        _ => shown.Number(limit),
    };
}
