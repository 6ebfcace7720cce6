using System.Collections.Immutable;
using FixScore.Numbers;

namespace FixScore.Analysis.Comparing;

/// <summary>What each criterion adds to the totals of a profile, as share of the profile's scale, so that profiles compare.</summary>
static class Contributions
{
    /// <summary>The name under which caps by gates stand.</summary>
    public const string Gates = "gates";

    /// <summary>A table of devices and criteria; the last column is what gates take away.</summary>
    public static UnitTable Of(ProfileScores scores)
    {
        var span = scores.Profile.Scale.Max - scores.Profile.Scale.Min;
        var rows = scores.Scores.Select(score => ByCriterion(score)).ToArray();
        ImmutableArray<string> criteria = [.. rows.SelectMany(row => row.Keys).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal), Gates];
        return UnitTables.Of(scores.Devices, criteria,
            rows.Select((row, device) => criteria.Select(each => ((row.TryGetValue(each, out var points) ? points : Capped(scores.Scores[device], each)) / span).ToDecimal()).ToImmutableArray()));
    }

    /// <summary>Whether all contributions are exact, and not stood in for by share x value where something above is not linear.</summary>
    public static bool AreExact(ProfileScores scores) =>
        scores.Scores.All(score => ScoreLines.Lowest(score).All(line => line.Contribution is not null || line.Share == 0m));

    static Dictionary<string, Rational> ByCriterion(ScoreDocument score) => ScoreLines.Lowest(score).Where(line => line.Share > 0m)
        .GroupBy(ScoreLines.CriterionOf, StringComparer.Ordinal)
        .ToDictionary(lines => lines.Key, lines => lines.Aggregate((Rational)0m, (sum, line) => sum + Points(line)), StringComparer.Ordinal);

    static Rational Points(ScoreNode line) => line.Contribution is { } ends
        ? ((Rational)ends.Low + ends.High) / 2m
        : (Rational)line.Share * line.Value.Middle();

    static Rational Capped(ScoreDocument score, string column) =>
        column == Gates ? (Rational)score.Total.Middle() - score.BeforeGates.Middle() : 0m;
}
