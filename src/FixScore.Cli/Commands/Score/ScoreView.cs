using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Score;

/// <summary>Scores as text.</summary>
sealed class ScoreView(Canvas canvas, CultureInfo culture)
{
    const int MostMissing = 6;

    readonly VerdictText verdict = new(culture);
    readonly NotesText notes = new(culture);
    readonly LineView lines = new(canvas, culture);

    public void Show(Judgement judgement, bool explain)
    {
        Head(judgement);
        lines.Show(judgement);
        if (explain) Notes(judgement);
        else Missing(judgement);
        foreach (var line in notes.Cautions(judgement, everyReading: explain)) Note(line);
        canvas.Line();
    }

    public void ShowRanking(IEnumerable<Judgement> judgements)
    {
        canvas.Heading("Ranking");
        new RankingView(canvas, culture).Show(judgements);
    }

    void Head(Judgement judgement)
    {
        var profile = judgement.Score.Profile;
        canvas.Heading($"{judgement.Device} ({judgement.Record.Id})");
        canvas.Line($"by {judgement.Profile.Title} ({profile.Id} {profile.Version}), {Word.Of(judgement.Score.Mode)}");
        canvas.Line();
        canvas.Heading(verdict.Total(judgement));
        canvas.Line($"{verdict.Known(judgement)} {verdict.Limit(judgement)}");
    }

    void Notes(Judgement judgement)
    {
        foreach (var (index, line) in notes.Criteria(judgement).Index())
        {
            if (index > 0 && line is { Level: 0, Kind: NoteKind.Heading }) canvas.Line();
            Note(line);
        }
        canvas.Line();
    }

    void Note(NoteLine line)
    {
        if (line is { Level: 0, Kind: NoteKind.Heading }) canvas.Heading(line.Text);
        else canvas.Item(line.Level, Mark(line.Kind), line.Text, quiet: line.Kind == NoteKind.Rule);
    }

    void Missing(Judgement judgement)
    {
        var missing = VerdictText.Missing(judgement);
        if (missing.IsEmpty) return;
        canvas.Line("What would narrow it:");
        foreach (var each in missing.Take(MostMissing)) canvas.Item(0, "?", each);
        if (missing.Length > MostMissing) canvas.Line($"  and {(missing.Length - MostMissing).ToString(culture)} more; --explain lists them.");
        canvas.Line();
    }

    static string Mark(NoteKind kind) => kind switch
    {
        NoteKind.Observation => "-",
        NoteKind.Missing => "?",
        NoteKind.Caution => "!",
        _ => "",
    };
}
