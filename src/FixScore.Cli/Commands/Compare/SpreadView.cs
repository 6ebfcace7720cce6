using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Compare;

/// <summary>How each score can be off: what the middle of the draws says, which class is how probable, which observation is worth most, what other readings do.</summary>
sealed class SpreadView(Canvas canvas, CultureInfo culture)
{
    readonly Shown shown = new(culture);

    public void Show(Compared compared)
    {
        if (compared.Spreads.IsEmpty) return;
        canvas.Line();
        canvas.Heading("How far scores can be off");
        foreach (var profile in compared.Spreads.GroupBy(spread => spread.Profile))
        {
            canvas.Line(compared.Result.Profiles[profile.Key]);
            canvas.Table(
                [("", false), ("5 %", true), ("Median", true), ("95 %", true), ("Class", false)],
                profile.Select(spread => (string[])[compared.Names[spread.Device], .. Quantiles(spread), Classes(spread)]));
            foreach (var spread in profile) Notes(compared, spread);
        }
        canvas.Line("Drawn evenly from what open observations allow, each line on its own: a guess beside the proven interval.");
    }

    IEnumerable<string> Quantiles(Spread spread) => new[] { 0.05m, 0.5m, 0.95m }.Select(share => shown.Number(decimal.Round(spread.Uncertainty.Quantile(share), 2)));

    string Classes(Spread spread) =>
        string.Join(", ", spread.Uncertainty.Classes.Select(each => each.Share == 1m ? each.Label : $"{each.Label} {shown.Percent(each.Share)}"));

    void Notes(Compared compared, Spread spread)
    {
        var (name, uncertainty) = (compared.Names[spread.Device], spread.Uncertainty);
        if (uncertainty.Open is [{ Gain: > 0 } first, ..])
            canvas.Item(1, "?", $"{name}: knowing {first.Title} ({first.Path}) would narrow the total most, by {shown.Number(decimal.Round(first.Gain, 2))} at least.");
        if (uncertainty.Readings != uncertainty.Total)
            canvas.Item(1, "-", $"{name}: other readings of what the rules leave silent put it anywhere from {shown.Points(Rounded(uncertainty.Readings))}.");
    }

    static Interval Rounded(Interval value) => new(decimal.Round(value.Low, 2), decimal.Round(value.High, 2));
}
