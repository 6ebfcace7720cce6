using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace FixScore.Reporting.Html;

/// <summary>Scores of several devices by several profiles on one self-contained page: no script, no network.</summary>
/// <remarks>The same input gives the same bytes. Text of records is escaped. Thread safe.</remarks>
public static class SummaryPage
{
    /// <summary>The page as UTF-8.</summary>
    /// <param name="title">The heading.</param>
    /// <param name="introduction">A sentence or two below it.</param>
    /// <param name="judgements">The scores; profiles appear in the order of their first judgement.</param>
    /// <param name="culture">How numbers are written.</param>
    public static byte[] Render(string title, string introduction, ImmutableArray<Judgement> judgements, CultureInfo culture)
    {
        var sections = new SummarySections(culture);
        var profiles = judgements.GroupBy(each => each.Score.Profile).Select(Judgement.Ranked).ToArray();
        var body = Markup.Element("main", [
            Markup.Element("header", [Markup.Element("h1", [title]), Markup.Classed("p", "lead", [introduction])]),
            .. profiles.Select(sections.Ranking),
            .. profiles.SelectMany(ranked => ranked).GroupBy(each => each.Record.Id).Select(each => sections.Device([.. each])),
            sections.Cautions(judgements),
            sections.Reproduction(judgements)]);
        return Encoding.UTF8.GetBytes(Page(title, body));
    }

    static string Page(string title, Markup body) =>
        $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta name="color-scheme" content="light dark">
        <title>{((Markup)title).Html}</title>
        <style>
        {Style}
        </style>
        </head>
        <body>
        {body.Html}
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
