using System.Globalization;

namespace FixScore.Reporting.Cards;

/// <summary>The foot of a card: whose rules, from when, how to check it, and the caution.</summary>
static class CardFoot
{
    const string Between = "   \u00B7   ";
    const int ShortDigest = 12;
    const int ShorterDigest = 8;

    /// <summary>Draws the foot and gives the distance of its upper side from the top.</summary>
    public static int Draw(Easel easel, CardGrid grid, Judgement[] judgements)
    {
        var step = grid.Small * 142 / 100;
        var source = Paragraph.Fit(Source(judgements), Face.Plain, grid.Inner, new Setting(grid.Small), new Setting(grid.Small, 2));
        var caution = Paragraph.Fit(Caution(judgements[0].Profile), Face.Plain, grid.Inner, new Setting(grid.Small, grid.CautionLines));
        var first = grid.Height - grid.Bottom - (source.Lines.Length + caution.Lines.Length - 1) * step;
        var top = first - step - grid.Small / 4;
        easel.Fill(new(grid.Margin, top, grid.Inner, 2), Tone.Rule);
        var last = easel.Write(source, grid.Margin, first, Face.Plain, Tone.Ink);
        easel.Write(caution, grid.Margin, last + step, Face.Plain, Tone.Soft);
        return top;
    }

    /// <summary>The same at length.</summary>
    public static string Told(Judgement[] judgements) =>
        $"Profile {ProfileOf(judgements[0])}. {string.Join(" ", judgements.Select(each => $"{each.Record.Id}: assessed {Date(each)}, score {each.Score.ComputeDigest()}."))} {Caution(judgements[0].Profile)}".TrimEnd();

    static string Source(Judgement[] judgements) => string.Join(Between,
        $"profile {ProfileOf(judgements[0])}", $"assessed {Dates(judgements)}", $"{(judgements.Length == 1 ? "score" : "scores")} {string.Join(' ', judgements.Select(each => Digest(each, judgements.Length == 1 ? ShortDigest : ShorterDigest)))}");

    static string ProfileOf(Judgement judgement) => $"{judgement.Score.Profile.Id} {judgement.Score.Profile.Version}";

    static string Dates(Judgement[] judgements) =>
        (judgements.Min(Date), judgements.Max(Date)) is var (first, last) && first == last ? first! : $"{first} to {last}";

    static string Date(Judgement judgement) => judgement.Record.Assessment.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    static string Digest(Judgement judgement, int length) => judgement.Score.ComputeDigest().Split(':')[^1][..length];

    static string Caution(Profile profile) => string.Join(' ', profile.Notices.Prepend(
        profile.Status == ProfileStatus.Draft ? "Draft rules: not to be published as a result." : profile.Notices.IsEmpty ? "" : "Screening aid.")).Trim();
}
