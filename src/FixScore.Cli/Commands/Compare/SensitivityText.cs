using System.Collections.Immutable;
using System.Globalization;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Sensitivity;

namespace FixScore.Cli.Commands.Compare;

/// <summary>What is uncertain in a study of sensitivity, and how far, in sentences to be quoted.</summary>
static class SensitivityText
{
    /// <summary>An input as a row of a table names it.</summary>
    public static string Name(RankShiftInput input) => input.Kind switch
    {
        InputKind.Weight => $"weight of {input.Name}",
        InputKind.Rule => "rule of aggregation",
        InputKind.Gates => "gates off or on",
        InputKind.Unknown => "policy for what is unknown",
        InputKind.Readings => "readings of silent points",
        _ => input.Name,
    };

    /// <summary>The ranges from which inputs are drawn, and what the draws rest on.</summary>
    public static string Ranges(RankShiftSensitivity sensitivity, CultureInfo culture) => string.Join(' ', Sentences(sensitivity, culture));

    /// <summary>The method, for a paper.</summary>
    public static IEnumerable<string> Methods(ImmutableArray<WeightStudy> studies)
    {
        var all = studies.Where(study => study.Sensitivity is not null).ToArray();
        if (all.Length == 0) yield break;
        yield return "Sensitivity is told by Sobol indices of the average shift in rank from the ranking as the rules stand (Saisana, Saltelli and Tarantola 2005): the first-order index is the share of its variance that an input answers for alone, the total index that with all its interactions; estimates by Saltelli et al. 2010 and Jansen 1999.";
        foreach (var same in all.GroupBy(study => Ranges(study.Sensitivity!, CultureInfo.InvariantCulture), StringComparer.Ordinal))
            yield return $"{(all.Length == 1 ? "" : $"For {string.Join(" and ", same.Select(study => study.Name))}: ")}{same.Key}";
    }

    static IEnumerable<string> Sentences(RankShiftSensitivity sensitivity, CultureInfo culture)
    {
        yield return "Each weight is drawn from none to twice its share.";
        yield return "The rule is arithmetic, geometric or harmonic mean, minimum or Copeland's outranking.";
        if (sensitivity.Bands is { } bands) yield return $"The points of all bands and levels of a line are multiplied by one of {Number(bands.Levels, culture)} factors from {Number(1m - bands.Range, culture)} to {Number(1m + bands.Range, culture)}, within the scale.";
        foreach (var input in sensitivity.Inputs)
            if (OfChoice(input, culture) is { } sentence) yield return sentence;
        if (sensitivity.RunsPerRecord > 0) yield return $"Each way of a choice is as likely as any other; for this each record was scored {Number(sensitivity.RunsPerRecord, culture)} times.";
    }

    static string? OfChoice(RankShiftInput input, CultureInfo culture) => input.Kind switch
    {
        InputKind.Gates => "Gates cap where they close for certain, or not at all; an outranking has no points to cap.",
        InputKind.Unknown => "What is unknown counts as the profile says, or by another policy: as the whole scale, of which the middle is taken, as the worst, or not at all.",
        InputKind.Readings => $"Silent points are read as the profile takes them, or one of them in another way, {Number(input.Ways - 1, culture)} in all.",
        _ => null,
    };

    static string Number(decimal number, CultureInfo culture) => number.ToString("0.####", culture);
}
