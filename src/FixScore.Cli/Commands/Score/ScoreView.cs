using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Score;

/// <summary>Scores as text.</summary>
sealed class ScoreView(Canvas canvas, CultureInfo culture)
{
    const int MostMissing = 6;

    readonly Shown shown = new(culture);
    readonly AssessorNotes notes = new(culture);

    public void Show(Judgement judgement, bool explain)
    {
        Head(judgement);
        canvas.Line();
        Lines(judgement);
        if (explain) Notes(judgement);
        else Missing(judgement);
        foreach (var note in judgement.Score.Notes) canvas.Item(0, "!", note);
        canvas.Line();
    }

    void Head(Judgement judgement)
    {
        var (score, scale) = (judgement.Score, judgement.Profile.Scale);
        canvas.Heading($"{judgement.Device} ({judgement.Record.Id})");
        canvas.Line($"by {judgement.Profile.Title} ({score.Profile.Id} {score.Profile.Version}), {Word.Of(score.Mode)}");
        canvas.Line();
        canvas.Heading($"{shown.Points(score.Shown)} points of {shown.Number(scale.Min)} to {shown.Number(scale.Max)}{ClassText(score)}");
        canvas.Line($"{shown.Percent(score.Coverage)} of the weight is fully known.");
        foreach (var gate in score.Gates) canvas.Item(0, "!", notes.GateText(gate));
        if (judgement.Limit is { } limit)
            canvas.Line($"What limits it most: {Where(limit)}; at its best the low end would rise by {shown.Short(limit.Headroom)}.");
    }

    static string Where(ScoreNode node) => string.Join(", ", node.Path.Split('/').Skip(1));

    static string ClassText(ScoreDocument score) => score.Class is not { } range ? ""
        : range.Low == range.High ? $": {range.Low}" : $": {range.Low} to {range.High}";

    void Lines(Judgement judgement) => canvas.Table(
        [("Line", false), ("Points", true), ("Weight", true), ("Of the total", true), ("Headroom", true)],
        judgement.Score.Nodes.Where(IsShown).Select(node => (string[])[
            new string(' ', 2 * Depth(node)) + node.Title,
            shown.Points(node.Shown),
            node.Weight is { } weight ? shown.Number(weight) : "",
            node.Contribution is { } ends ? Contribution(ends) : "",
            shown.Short(node.Headroom)]));

    // Parts are named with --explain; here their roles are enough.
    static bool IsShown(ScoreNode node) => node.Weight is not null || Depth(node) == 0;

    static int Depth(ScoreNode node) => node.Path.Count(letter => letter == '/');

    string Contribution(Ends ends) => shown.Short(ends.Low) == shown.Short(ends.High) ? shown.Short(ends.Low) : $"{shown.Short(ends.Low)} to {shown.Short(ends.High)}";

    void Notes(Judgement judgement)
    {
        foreach (var line in notes.Of(judgement).SkipLast(judgement.Score.Notes.Length))
        {
            if (line is { Level: 0, Kind: NoteKind.Heading }) canvas.Line();
            canvas.Item(line.Level, Mark(line.Kind), line.Text, line.Kind == NoteKind.Rule);
        }
        canvas.Line();
    }

    void Missing(Judgement judgement)
    {
        var missing = judgement.Score.Nodes.SelectMany(node => node.Missing).Distinct().ToArray();
        if (missing.Length == 0) return;
        canvas.Line("What would narrow it:");
        foreach (var each in missing.Take(MostMissing)) canvas.Item(0, "?", $"{each.What} ({(each.At.Text.Length == 0 ? "record" : each.At.Text)})");
        if (missing.Length > MostMissing) canvas.Line($"  and {shown.Number(missing.Length - MostMissing)} more; --explain lists them.");
        canvas.Line();
    }

    static string Mark(NoteKind kind) => kind switch
    {
        NoteKind.Observation => "-",
        NoteKind.Missing => "?",
        NoteKind.Caution => "!",
        _ => "",
    };

    public void ShowRanking(IReadOnlyCollection<Judgement> judgements)
    {
        canvas.Heading("Ranking");
        canvas.Table([("", true), ("Device", false), ("Points", true), ("Fully known", true), ("Against the next", false)], Ranking.Of(judgements).Select(place => (string[])[
            shown.Number(place.Rank), place.Judgement.Device, shown.Points(place.Judgement.Score.Shown), shown.Percent(place.Judgement.Score.Coverage), place.Remark]));
    }
}
