using System.Collections.Immutable;
using System.Globalization;
using FixScore.Analysis.Generations;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Diff;

/// <summary>Both scores, what each line did to the difference, and the reasons given.</summary>
sealed class AttributionView(Canvas canvas, Shown shown, CultureInfo culture)
{
    const int MostLines = 2;

    public void Show(Profile profile, ScoreAttribution attribution)
    {
        canvas.Line($"By {profile.Id} {profile.Version}: {Points(attribution.Old)} points before, {Points(attribution.New)} now.");
        if (attribution.Deltas.IsEmpty) canvas.Line("No line of the score changed.");
        else Deltas(attribution);
    }

    void Deltas(ScoreAttribution attribution)
    {
        NodeDelta[] sorted = [.. attribution.Deltas.OrderByDescending(delta => Math.Abs(delta.Low) + Math.Abs(delta.High))];
        canvas.Table(
            [("What did it", false), ("Low end", true), ("High end", true)],
            sorted.Select(delta => (string[])[delta.Title, Signed(delta.Low), Signed(delta.High)])
                .Append(["together", Signed(attribution.New.Low - attribution.Old.Low), Signed(attribution.New.High - attribution.Old.High)]));
        canvas.Line(attribution.IsAdditive ? "Differences of contributions; they add up exactly." : "Shapley values: what each adds on average over all orders of change; they add up exactly.");
        foreach (var delta in sorted.Where(delta => !delta.Lines.IsEmpty)) Why(delta);
    }

    void Why(NodeDelta delta)
    {
        canvas.Line();
        canvas.Heading(delta.Title);
        foreach (var line in delta.Lines.Take(MostLines)) Line(delta, line);
        if (delta.Lines.Length > MostLines) canvas.Item(1, "", string.Create(culture, $"and {delta.Lines.Length - MostLines} more; --json lists all."), quiet: true);
    }

    void Line(NodeDelta delta, LineChange line)
    {
        canvas.Item(1, "", delta.Node == ScoreAttribution.Gates
            ? $"Cap at {Points((line.New ?? line.Old)!.Value)}, {(line.New is null ? "before" : "now")} only: {line.Title}"
            : $"{(line.Path == delta.Node ? "" : line.Title + ": ")}{Told(line.Old)} before, {Told(line.New)} now");
        Reason("before:", line.Before);
        Reason("now:   ", line.Now);
    }

    void Reason(string when, ImmutableArray<ScoreReason> reasons)
    {
        if (!reasons.IsEmpty) canvas.Item(2, when, reasons[0].Text + (reasons.Length > 1 ? string.Create(culture, $" (and {reasons.Length - 1} more)") : ""));
    }

    string Told(Interval? points) => points is { } known ? Points(known) : "left out";

    string Points(Interval value) => shown.Points(new Interval(decimal.Round(value.Low, 2), decimal.Round(value.High, 2)));

    // What is too small to show is no zero.
    string Signed(decimal value) => value != 0m && Math.Abs(value) < 0.005m
        ? string.Create(culture, $"{(value > 0m ? '+' : '−')}{0.00m}")
        : decimal.Round(value, 2).ToString("+0.##;−0.##;0", culture);
}
