using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace FixScore.Reporting.Html;

/// <summary>Scores of several devices by several profiles on one self-contained page: no script, no network.</summary>
/// <remarks>The same input gives the same bytes. Text of records is escaped. Thread safe.</remarks>
public static class SummaryPage
{
    const string Legend =
        "Solid: certain, whatever the open observations turn out to be. Hatched: depends on them. A place like \u201C2 to 3\u201D is not settled: the totals overlap.";

    /// <summary>The page as UTF-8.</summary>
    /// <param name="title">The heading.</param>
    /// <param name="introduction">A sentence or two below it.</param>
    /// <param name="judgements">The scores, one at least; profiles and devices appear in the order of the first profile's ranking.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <exception cref="ArgumentException">There are no scores.</exception>
    public static byte[] Render(string title, string introduction, ImmutableArray<Judgement> judgements, CultureInfo culture)
    {
        if (judgements.IsDefaultOrEmpty) throw new ArgumentException("There is nothing to report.", nameof(judgements));
        var devices = new DeviceSection(culture);
        var rankings = judgements.GroupBy(each => each.Score.Profile).Select(Placing.Of).ToArray();
        var main = Markup.Element("main", [
            IntervalBar.Hatching,
            Markup.Element("header", [Markup.Element("h1", [title]), Markup.Classed("p", "lead", [introduction])]),
            .. rankings.Select(ranked => Ranking(ranked, new(culture))),
            .. rankings.SelectMany(ranked => ranked).Select(each => each.Judgement).GroupBy(each => each.Record.Id).Select(each => devices.Of([.. each])),
            Cautions(judgements),
            Reproduction.Of(judgements)]);
        return Encoding.UTF8.GetBytes(Page(title, main));
    }

    static Markup Ranking(IReadOnlyList<Placing> ranked, Shown shown)
    {
        var profile = ranked[0].Judgement.Profile;
        return Markup.Element("section", [
            Markup.Element("h2", [$"By the profile \u201C{profile.Title}\u201D"]),
            Markup.Classed("p", "quiet", [profile.Note ?? ""]),
            Markup.Element("figure", [RankingChart.Of(ranked, shown), Markup.Element("figcaption", [Legend])]),
            Markup.List(profile.Notices.Select(notice => (Markup)notice))]);
    }

    static Markup Cautions(IEnumerable<Judgement> judgements) => Markup.Element("section", [
        Markup.Element("h2", ["Before anyone opens a device"]),
        Markup.List(SafetyText.For(judgements.Select(each => each.Record)).Select(text => (Markup)text))]);

    static string Page(string title, Markup main) =>
        $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta name="color-scheme" content="light dark">
        <title>{((Markup)title).Html}</title>
        <style>
        {Style}</style>
        </head>
        <body>
        {main.Html}
        </body>
        </html>

        """.ReplaceLineEndings("\n");

    static string Style
    {
        get
        {
            using var stream = typeof(SummaryPage).Assembly.GetManifestResourceStream("summary.css")!;
            using var reader = new StreamReader(stream, Encoding.UTF8);
            return reader.ReadToEnd();
        }
    }
}
