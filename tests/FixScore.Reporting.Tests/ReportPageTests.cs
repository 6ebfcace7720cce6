using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using FixScore.Reporting.Reports;

namespace FixScore.Reporting.Tests;

public sealed partial class ReportPageTests
{
    const string Hostile = "</title></svg><script>alert(1)</script><img src=x onerror=alert(1)> \" ' & \u001b[2J \u202Egnp\u0000";

    static string Page(ReportInput input) => Encoding.UTF8.GetString(Report.Html(input, CultureInfo.InvariantCulture));

    static string Demo { get; } = Page(Bench.Report);

    // HTML's void elements and doctype are all that keeps the page from being XML.
    static XElement Parsed(string page) => XElement.Parse(VoidElement().Replace(page, "$0</$1>").Replace("<!DOCTYPE html>", "", StringComparison.Ordinal));

    static ReportInput Named(string name) => Bench.ReportOf([Bench.Document("larkfield-slate-2", record =>
    {
        (record["device"]!["maker"], record["device"]!["model"], record["assessment"]!["assessor"]) = (name, name, name);
        foreach (var part in record["parts"]!.AsArray()) part!["name"] = name;
        foreach (var evidence in record["evidence"]!.AsArray()) evidence!["ref"] = name;
    }), Bench.Document("larkfield-slate-3")], ["bench-balanced", "bench-limiting"], ("larkfield-slate-2", "larkfield-slate-3"));

    [Fact]
    public void Every_element_is_closed_and_every_id_is_used_once()
    {
        var ids = Parsed(Demo).Descendants().Attributes("id").Select(id => id.Value).ToArray();
        Assert.Equal(ids.Distinct(), ids);
        Assert.Contains("larkfield-slate-3", ids);
    }

    [Fact]
    public void It_needs_nothing_from_anywhere()
    {
        var page = Parsed(Demo);
        Assert.DoesNotContain(page.Descendants(), element => element.Name.LocalName is "script" or "link" or "img" or "iframe" or "object" or "image" or "use");
        Assert.DoesNotContain(page.Descendants().Attributes(), attribute => attribute.Name.LocalName is "src" or "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.All(page.Descendants().Attributes("href"), link => Assert.Matches("^(#|data:application/json;base64,)", link.Value));
        Assert.DoesNotContain("@import", Demo, StringComparison.Ordinal);
        Assert.Equal(["url(#open)"], Url().Matches(Demo).Select(match => match.Value).Distinct());
    }

    [Fact]
    public void The_same_scores_give_the_same_bytes_in_any_order_of_threads_and_cultures()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("ar-SA");
            Assert.All(Enumerable.Range(0, 4).AsParallel().Select(_ => Page(Bench.Report)), page => Assert.Equal(Demo, page));
            Assert.Equal(Demo, Page(Bench.Report));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Text_of_a_record_stays_text()
    {
        var page = Page(Named(Hostile));
        var known = Parsed(Demo).DescendantsAndSelf().Select(element => element.Name.LocalName).ToHashSet();
        Assert.DoesNotContain(Parsed(page).DescendantsAndSelf(), element => !known.Contains(element.Name.LocalName));
        Assert.DoesNotContain(Parsed(page).Descendants().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.DoesNotContain(page, letter => letter is '\u001b' or '\u202E' or '\u0000');
        Assert.Contains("<script>alert(1)</script>", Parsed(page).Descendants("h2").Select(heading => heading.Value).First(text => text.Contains("alert", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Names_of_10000_letters_are_cut_in_drawings_and_headings()
    {
        var page = Parsed(Page(Named(new string('x', 10_000))));
        Assert.DoesNotContain(page.Descendants("text"), text => text.Value.Length > 80);
        Assert.DoesNotContain(page.Descendants("h2"), heading => heading.Value.Length > 80);
    }

    [Fact]
    public void Each_profile_has_a_ranking_and_each_device_a_drawing_by_each_profile()
    {
        var charts = Parsed(Demo).Descendants("svg").Count(svg => (string?)svg.Attribute("class") == "chart");
        Assert.Equal(2 + (4 * 2), charts);
    }

    [Fact]
    public void The_verdict_comes_first_in_one_sentence()
    {
        var first = Parsed(Demo).Descendants("main").Single().Descendants("p").First(p => (string?)p.Attribute("class") == "lead").Value;
        Assert.StartsWith("Larkfield Slate 3 is the most repairable of these 4: 95.2 to 96.1 points on a scale from 0 to 100", first, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_score_document_can_be_saved_from_the_page_and_is_the_one_told_of()
    {
        var saved = Parsed(Demo).Descendants("a").Where(link => link.Attribute("download") is not null)
            .Select(link => Convert.FromBase64String(((string)link.Attribute("href")!)["data:application/json;base64,".Length..])).ToArray();
        Assert.Equal(Bench.Report.Judgements.Length, saved.Length);
        Assert.All(Bench.Report.Judgements.Zip(saved), each =>
        {
            using var document = JsonDocument.Parse(each.Second);
            Assert.Equal(Verdict.Identical, Verifier.Compare(document.RootElement, each.First.Score).Verdict);
        });
    }

    [Fact]
    public void Every_link_within_the_page_leads_somewhere()
    {
        var page = Parsed(Demo);
        var ids = page.Descendants().Attributes("id").Select(id => id.Value).ToHashSet();
        Assert.All(page.Descendants("a").Attributes("href").Where(link => link.Value.StartsWith('#')), link => Assert.Contains(link.Value[1..], ids));
    }

    // HTML Standard 4.3.11: headings name their sections; none is skipped on the way down.
    [Fact]
    public void No_level_of_heading_is_skipped()
    {
        var levels = Parsed(Demo).Descendants().Where(element => Heading().IsMatch(element.Name.LocalName)).Select(element => element.Name.LocalName[1] - '0').ToArray();
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
        Assert.Single(levels, level => level == 1);
    }

    [Fact]
    public void Everything_needed_to_check_it_is_there()
    {
        foreach (var each in Bench.Demo)
            Assert.All([each.Score.Record.Digest, each.Score.Profile.Digest, each.Score.ComputeDigest(), $"fixscore score {each.Record.Id}.json --profile {each.Profile.Id}@{each.Profile.Version} --json"],
                text => Assert.Contains(text, Demo, StringComparison.Ordinal));
    }

    [Fact]
    public void Numbers_follow_the_culture_asked_for_and_drawings_do_not()
    {
        var page = Parsed(Encoding.UTF8.GetString(Report.Html(Bench.Report, CultureInfo.GetCultureInfo("de-DE"))));
        Assert.Contains(page.Descendants("p"), text => text.Value.StartsWith("76,1 to 80,4 points", StringComparison.Ordinal));
        Assert.DoesNotContain(page.Descendants("rect").Attributes("width"), width => width.Value.Contains(',', StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_to_report_is_refused() => Assert.Throws<ArgumentException>(() => Page(new() { Judgements = [] }));

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void The_report_as_Markdown_as_somebody_has_read_it(string culture) =>
        Approved.Matches($"report{(culture.Length > 0 ? "-" + culture : "")}.md", Plain(Report.Markdown(Bench.Report, CultureInfo.GetCultureInfo(culture))));

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void The_report_as_text_as_somebody_has_read_it(string culture) =>
        Approved.Matches($"report{(culture.Length > 0 ? "-" + culture : "")}.txt", Plain(Report.Text(Bench.Report, CultureInfo.GetCultureInfo(culture))));

    [Fact]
    public void Text_fits_80_columns_but_for_what_is_to_be_copied() =>
        Assert.All(Report.Text(Bench.Report, CultureInfo.InvariantCulture).Split('\n'), line => Assert.True(line.Length <= 80 || line.Contains("fixscore", StringComparison.Ordinal), line));

    static string Plain(string text) => Digest().Replace(Version().Replace(text, "VERSION"), "sha256:DIGEST");

    [GeneratedRegex("<(meta)[^>]*>")]
    private static partial Regex VoidElement();

    [GeneratedRegex("^h[1-6]$")]
    private static partial Regex Heading();

    [GeneratedRegex(@"url\([^)]*\)")]
    private static partial Regex Url();

    [GeneratedRegex("sha256:[0-9a-f]{64}")]
    private static partial Regex Digest();

    [GeneratedRegex(@"(?<=(Kernel|FixScore\.[A-Za-z.]+) )\d+\.\d+\.\d+")]
    private static partial Regex Version();
}
