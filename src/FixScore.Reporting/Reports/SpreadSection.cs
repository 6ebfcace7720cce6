using System.Collections.Immutable;
using System.Globalization;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>How far each score can be off: quantiles of draws, classes, the observation worth most, other readings of the rules.</summary>
sealed class SpreadSection(CultureInfo culture)
{
    readonly Shown shown = new(culture);

    public IEnumerable<Section> Of(ReportInput input)
    {
        if (input.Spreads.IsEmpty) yield break;
        yield return new("How far the scores can be off",
        [
            .. input.Spreads.GroupBy(spread => spread.Judgement.Score.Profile).SelectMany(profile => Profile([.. profile])),
            new Prose($"The ends are proven. In between, open lines are drawn evenly, each on its own: a guess about what was not observed.{Drawn(input)}", Tone.Quiet),
        ])
        { Anchor = "uncertainty" };
    }

    string Drawn(ReportInput input) => input.Draws is { } draws ? $" Seed {shown.Number(draws.Seed)}." : "";

    IEnumerable<Block> Profile(ScoreSpread[] spreads)
    {
        var profile = spreads[0].Judgement.Profile;
        yield return new Grid($"By \u201C{profile.Title}\u201D",
            ["Device", new("", GridKind.Span), new("Low end", GridKind.Number), new("5 %", GridKind.Number) { IsExtra = true }, new("Median", GridKind.Number), new("95 %", GridKind.Number) { IsExtra = true }, new("High end", GridKind.Number), .. profile.Classes.IsEmpty ? [] : (GridColumn[])["Class"]],
            [.. spreads.Select(spread => Row(spread).ToImmutableArray())]);
        yield return new Items([.. spreads.SelectMany(Notes)]);
    }

    IEnumerable<GridCell> Row(ScoreSpread spread)
    {
        var (uncertainty, scale) = (spread.Uncertainty, spread.Judgement.Profile.Scale.Points);
        yield return Name(spread);
        yield return new("") { Extent = new(uncertainty.Total, scale, uncertainty.Quantile(0.5m)) };
        yield return Rounded(uncertainty.Total.Low);
        foreach (var share in new[] { 0.05m, 0.5m, 0.95m }) yield return Rounded(uncertainty.Quantile(share));
        yield return Rounded(uncertainty.Total.High);
        if (!spread.Judgement.Profile.Classes.IsEmpty)
            yield return string.Join(", ", uncertainty.Classes.Select(each => each.Share == 1m ? each.Label : $"{each.Label} {shown.Percent(each.Share)}"));
    }

    IEnumerable<Item> Notes(ScoreSpread spread)
    {
        var uncertainty = spread.Uncertainty;
        if (uncertainty.Open is [{ Gain: > 0 } first, ..])
            yield return new($"{Name(spread)}: knowing {first.Title} ({first.Path}) would narrow the total most, by {Rounded(first.Gain)} at least.");
        if (uncertainty.Readings != uncertainty.Total)
            yield return new($"{Name(spread)}: other readings of what the rules leave silent put it anywhere from {Rounded(uncertainty.Readings.Low)} to {Rounded(uncertainty.Readings.High)}.");
    }

    string Rounded(decimal value) => shown.Number(decimal.Round(value, 2));

    static string Name(ScoreSpread spread) => PlainText.Of(spread.Judgement.Device, RecordTerms.LongestName);
}
