using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using FixScore.Reporting.Html;

namespace FixScore.Reporting.Tests;

public sealed partial class SummaryPageTests
{
    const string Hostile = "</title></svg><script>alert(1)</script><img src=x onerror=alert(1)> \" ' & \u001b[2J \u202Egnp\u0000";

    static string Page(params ImmutableArray<Judgement> judgements) =>
        Encoding.UTF8.GetString(SummaryPage.Render("Four tablets", "A story.", judgements, CultureInfo.InvariantCulture));

    static string Demo { get; } = Page(Bench.Demo);

    // HTML's void elements and doctype are all that keeps the page from being XML.
    static XElement Parsed(string page) => XElement.Parse(VoidElement().Replace(page, "$0</$1>").Replace("<!DOCTYPE html>", "", StringComparison.Ordinal));

    static Judgement Named(string name) => Bench.Judge("larkfield-slate-2", "bench-balanced", record =>
    {
        (record["device"]!["maker"], record["device"]!["model"], record["assessment"]!["assessor"]) = (name, name, name);
        foreach (var part in record["parts"]!.AsArray()) part!["name"] = name;
        foreach (var evidence in record["evidence"]!.AsArray()) evidence!["ref"] = name;
    });

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
        Assert.DoesNotContain(page.Descendants().Attributes(), attribute => attribute.Name.LocalName is "src" or "href" or "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
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
            Assert.All(Enumerable.Range(0, 4).AsParallel().Select(_ => Page(Bench.Demo)), page => Assert.Equal(Demo, page));
            Assert.Equal(Demo, Page(Bench.Demo));
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
    public void Names_of_10000_letters_are_cut_in_the_drawing_only()
    {
        var page = Parsed(Page(Named(new string('x', 10_000))));
        Assert.DoesNotContain(page.Descendants("text"), text => text.Value.Length > 60);
        Assert.Contains(page.Descendants("h2"), heading => heading.Value.Length > 20_000);
    }

    [Fact]
    public void Each_device_has_a_verdict_by_each_profile_and_each_profile_a_drawing()
    {
        var page = Parsed(Demo);
        Assert.Equal(8, page.Descendants("h3").Count());
        Assert.Equal(2, page.Descendants("svg").Count(svg => (string?)svg.Attribute("class") == "chart"));
        Assert.Contains(page.Descendants("strong"), strong => strong.Value.StartsWith("76.1 to 80.4 points on a scale from 0 to 100", StringComparison.Ordinal));
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
        var page = Parsed(Encoding.UTF8.GetString(SummaryPage.Render("t", "i", Bench.Demo, CultureInfo.GetCultureInfo("de-DE"))));
        Assert.Contains(page.Descendants("strong"), strong => strong.Value.StartsWith("76,1 to 80,4 points", StringComparison.Ordinal));
        Assert.DoesNotContain(page.Descendants("rect").Attributes("width"), width => width.Value.Contains(',', StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_to_report_is_refused() => Assert.Throws<ArgumentException>(() => Page([]));

    [Fact]
    public void The_page_as_somebody_has_read_it() => Approved.Matches("summary.html",
        Digest().Replace(Version().Replace(Page(Bench.Judge("larkfield-slate-3", "bench-balanced"), Bench.Judge("larkfield-slate-2", "bench-balanced")), "VERSION"), "sha256:DIGEST"));

    [GeneratedRegex("<(meta)[^>]*>")]
    private static partial Regex VoidElement();

    [GeneratedRegex(@"url\([^)]*\)")]
    private static partial Regex Url();

    [GeneratedRegex("sha256:[0-9a-f]{64}")]
    private static partial Regex Digest();

    [GeneratedRegex(@"(?<=(Kernel|FixScore\.[A-Za-z.]+) )\d+\.\d+\.\d+")]
    private static partial Regex Version();
}
