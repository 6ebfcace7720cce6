using System.Collections.Immutable;
using FixScore.Analysis.Comparing;

namespace FixScore.Reporting.Tables;

/// <summary>A comparison as tables. Stateless, so safe to use from any thread.</summary>
public static class ComparisonTables
{
    /// <summary>Scores, agreement, reversals and dominance.</summary>
    /// <param name="comparison">The comparison.</param>
    public static ImmutableArray<ResultTable> Of(ProfileComparison comparison) =>
        [Scores(comparison), Agreement(comparison), Reversals(comparison), Dominance(comparison)];

    static ResultTable Scores(ProfileComparison comparison) => new("scores", "Scores and places",
        [
            new("device", ColumnKind.Text, "id of the device or unit"),
            new("profile", ColumnKind.Text, "profile or rule"),
            new("low", ColumnKind.Number, "low end of the score, on the scale of the profile"),
            new("high", ColumnKind.Number, "high end of the score"),
            new("best", ColumnKind.Count, "best place, 1 is first"),
            new("worst", ColumnKind.Count, "worst place"),
            new("middle", ColumnKind.Number, "middle of both places"),
        ],
        [.. from device in Enumerable.Range(0, comparison.Devices.Length)
            from profile in Enumerable.Range(0, comparison.Profiles.Length)
            let score = comparison.Scores[device][profile]
            let rank = comparison.Ranks[device][profile]
            select Row(comparison.Devices[device], comparison.Profiles[profile], score.Low, score.High, rank.Best, rank.Worst, rank.Middle)]);

    static ResultTable Agreement(ProfileComparison comparison) => new("agreement", "Agreement of profiles",
        [
            new("a", ColumnKind.Text, "one profile or rule"),
            new("b", ColumnKind.Text, "the other"),
            new("kendallTauB", ColumnKind.Number, "Kendall's tau-b of the middles of places, -1 to 1, six decimals"),
            new("spearman", ColumnKind.Number, "Spearman's coefficient of the middles of places, -1 to 1, six decimals"),
            new("meanShift", ColumnKind.Number, "mean of the places moved"),
            new("largestShift", ColumnKind.Number, "most places moved"),
        ],
        [.. comparison.Pairs.Select(pair => Row(
            comparison.Profiles[pair.A], comparison.Profiles[pair.B], Six(pair.Agreement.TauB), Six(pair.Agreement.Spearman), pair.Shift.Mean, pair.Shift.Largest))]);

    static ResultTable Reversals(ProfileComparison comparison) => new("reversals", "Orders that turn round",
        [
            new("first", ColumnKind.Text, "above by a"),
            new("second", ColumnKind.Text, "above by b"),
            new("a", ColumnKind.Text, "one profile or rule"),
            new("b", ColumnKind.Text, "the other"),
            new("cause", ColumnKind.Text, "criterion that turns it most"),
            new("certain", ColumnKind.Text, "yes: whatever open observations turn out to be"),
        ],
        [.. from pair in comparison.Pairs
            from reversal in pair.Reversals
            select Row(comparison.Devices[reversal.First], comparison.Devices[reversal.Second], comparison.Profiles[pair.A], comparison.Profiles[pair.B],
                reversal.Cause?.Criterion, reversal.IsCertain ? "yes" : "no")]);

    static ResultTable Dominance(ProfileComparison comparison) => new("dominance", "Orders that hold under any weights",
        [new("over", ColumnKind.Text, "never below, whatever the weights"), new("under", ColumnKind.Text, "never above")],
        [.. comparison.Dominance.Pairs.Select(pair => Row(comparison.Devices[pair.Over], comparison.Devices[pair.Under]))]);

    static ImmutableArray<Cell> Row(params ReadOnlySpan<Cell> cells) => [.. cells];

    // Binary coefficients are the same everywhere in six decimals.
    static Cell Six(double? value) => value is { } known ? decimal.Round((decimal)known, 6) : default(Cell);
}
