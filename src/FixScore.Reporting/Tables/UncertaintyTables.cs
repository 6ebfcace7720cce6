using System.Collections.Immutable;
using FixScore.Analysis.Uncertainty;

namespace FixScore.Reporting.Tables;

/// <summary>How far one score can be off.</summary>
/// <param name="Device">Id of the device.</param>
/// <param name="Profile">The profile.</param>
/// <param name="Uncertainty">How far.</param>
public sealed record UncertainScore(string Device, string Profile, ScoreUncertainty Uncertainty);

/// <summary>How far scores can be off, as tables. Stateless, so safe to use from any thread.</summary>
public static class UncertaintyTables
{
    /// <summary>Spread of totals and shares of classes; none without scores.</summary>
    /// <param name="scores">A row for each.</param>
    public static ImmutableArray<ResultTable> Of(ImmutableArray<UncertainScore> scores) => scores.IsEmpty ? [] : [Spread(scores), Classes(scores)];

    static ResultTable Spread(ImmutableArray<UncertainScore> scores) => new("uncertainty", "How far a score can be off",
        [
            new("device", ColumnKind.Text, "id of the device"),
            new("profile", ColumnKind.Text, "profile"),
            new("low", ColumnKind.Number, "low end of the total, proven, in points"),
            new("high", ColumnKind.Number, "high end of the total, proven"),
            new("q05", ColumnKind.Number, "total that 5 % of the draws do not exceed, six decimals"),
            new("q25", ColumnKind.Number, "the same for 25 %"),
            new("median", ColumnKind.Number, "the same for 50 %"),
            new("q75", ColumnKind.Number, "the same for 75 %"),
            new("q95", ColumnKind.Number, "the same for 95 %"),
            new("mean", ColumnKind.Number, "mean of the draws, six decimals"),
            new("readingsLow", ColumnKind.Number, "lowest end under any one other reading of a silent point"),
            new("readingsHigh", ColumnKind.Number, "highest end under any one other reading"),
            new("open", ColumnKind.Text, "path of the open line that is worth knowing most; empty where nothing is open"),
            new("gain", ColumnKind.Number, "points by which knowing it narrows the total at least"),
        ],
        [.. scores.Select(Row)]);

    static ImmutableArray<Cell> Row(UncertainScore score)
    {
        var spread = score.Uncertainty;
        return
        [
            score.Device, score.Profile, spread.Total.Low, spread.Total.High,
            Six(spread.Quantile(0.05m)), Six(spread.Quantile(0.25m)), Six(spread.Quantile(0.5m)), Six(spread.Quantile(0.75m)), Six(spread.Quantile(0.95m)), Six(spread.Mean),
            spread.Readings.Low, spread.Readings.High, spread.Open.FirstOrDefault()?.Path, spread.Open.FirstOrDefault()?.Gain,
        ];
    }

    static ResultTable Classes(ImmutableArray<UncertainScore> scores) => new("classes", "How probable a class is",
        [
            new("device", ColumnKind.Text, "id of the device"),
            new("profile", ColumnKind.Text, "profile"),
            new("class", ColumnKind.Text, "the class"),
            new("share", ColumnKind.Number, "share of the draws in it, 0 to 1, six decimals"),
        ],
        [.. from score in scores
            from each in score.Uncertainty.Classes
            select ImmutableArray.Create<Cell>(score.Device, score.Profile, each.Label, Six(each.Share))]);

    static decimal Six(decimal value) => decimal.Round(value, 6);
}
