using System.Text;
using FixScore.Reporting.Blocks;
using FixScore.Reporting.Html;
using FixScore.Reporting.Pictures;

namespace FixScore.Reporting.Reports;

/// <summary>The report as one self-contained page.</summary>
static class ReportPage
{
    public static byte[] Render(ReportDocument document) => Encoding.UTF8.GetBytes(HtmlPage.Of(document.Title, [HtmlPage.Style("report.css"), RoutePicture.Style], Markup.Join(
        IntervalBar.Hatching,
        Markup.Element("header", [Markup.Element("h1", [document.Title])]),
        Contents(document),
        Markup.Element("main", [HtmlForm.Of(document.Blocks)]))));

    static Markup Contents(ReportDocument document) => Markup.Element("nav", [("aria-label", "Contents")], [Markup.Element("ul",
        [.. document.Blocks.OfType<Section>().Where(section => section.Anchor.Length > 0).Select(section =>
            Markup.Element("li", [Markup.Element("a", [("href", $"#{section.Anchor}")], [section.Title])]))])]);
}
