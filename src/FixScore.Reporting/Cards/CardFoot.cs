using System.Globalization;

namespace FixScore.Reporting.Cards;

/// <summary>The foot of a card: whose rules, from when, how to check it, and the caution.</summary>
static class CardFoot
{
    const string Between = "   \u00B7   ";
    const int ShortDigest = 12;

    /// <summary>Draws the foot and gives the distance of its upper side from the top.</summary>
    public static int Draw(Easel easel, CardGrid grid, Judgement[] judgements)
    {
        var step = grid.Small * 3 / 2;
        var caution = Paragraph.Fit(Caution(judgements[0].Profile), Face.Plain, grid.Inner, grid.CautionLines, grid.Small);
        var first = grid.Height - grid.Bottom - caution.Lines.Length * step;
        var top = first - step - grid.Small / 4;
        easel.Fill(new(grid.Margin, top, grid.Inner, 2), Tone.Rule);
        easel.Write(Paragraph.OneLine(Source(judgements), Face.Plain, grid.Small, grid.Inner), grid.Margin, first, Face.Plain, grid.Small, Tone.Ink);
        for (var line = 0; line < caution.Lines.Length; line++)
            easel.Write(caution.Lines[line], grid.Margin, first + (line + 1) * step, Face.Plain, grid.Small, Tone.Soft);
        return top;
    }

    /// <summary>The same at length.</summary>
    public static string Told(Judgement[] judgements) =>
        $"Profile {ProfileOf(judgements[0])}. {string.Join(" ", judgements.Select(each => $"{each.Record.Id}: assessed {Date(each)}, score {each.Score.ComputeDigest()}."))} {Caution(judgements[0].Profile)}".TrimEnd();

    static string Source(Judgement[] judgements) => string.Join(Between,
        $"profile {ProfileOf(judgements[0])}", $"assessed {Dates(judgements)}", $"{(judgements.Length == 1 ? "score" : "scores")} {string.Join(' ', judgements.Select(Digest))}");

    static string ProfileOf(Judgement judgement) => $"{judgement.Score.Profile.Id} {judgement.Score.Profile.Version}";

    static string Dates(Judgement[] judgements) =>
        (judgements.Min(Date), judgements.Max(Date)) is var (first, last) && first == last ? first! : $"{first} to {last}";

    static string Date(Judgement judgement) => judgement.Record.Assessment.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    static string Digest(Judgement judgement) => judgement.Score.ComputeDigest().Split(':')[^1][..ShortDigest];

    static string Caution(Profile profile) => profile.Notices.IsEmpty ? "" : $"Screening aid. {string.Join(' ', profile.Notices)}";
}
