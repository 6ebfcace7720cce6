using PuppeteerSharp.Media;

namespace FixScore.Browser.Tests;

/// <summary>Pages load whole from one file and fit the window.</summary>
[Collection(Chromium.Shared)]
public sealed class LoadingTests(Chromium chromium)
{
    // Words of the page that stick out of the window to the right, where there is no region to scroll.
    const string SticksOut = "() => document.documentElement.scrollWidth > document.documentElement.clientWidth ? [...document.querySelectorAll('body *')].filter(each => each.getBoundingClientRect().right > document.documentElement.clientWidth + 1).map(each => `${each.localName}.${each.getAttribute('class')} ${each.textContent.slice(0, 40)}`).concat('the document') : []";

    public static TheoryData<string, int> PagesAndWidths => [.. Pages.All.SelectMany(page => View.Widths, (page, width) => (page.Name, width))];

    [BrowserTheory]
    [MemberData(nameof(PagesAndWidths))]
    public async Task It_loads_without_a_complaint_or_a_request_and_fits(string name, int width)
    {
        foreach (var view in (View[])[new(width), new(width, "dark"), new(width, Media: MediaType.Print)])
        {
            await using var visit = await chromium.Open(name, view);
            Assert.Empty(visit.Complaints);
            Assert.Empty(visit.Requests);
            Assert.NotEqual("", await visit.Ask<string>("() => document.title"));
            Assert.Empty(await visit.Ask<string[]>(SticksOut));
        }
    }

    [BrowserFact]
    public async Task Faults_of_that_kind_are_seen()
    {
        await using var visit = await chromium.Open("faults", () => """
            <!DOCTYPE html><title>t</title><p style="width: 600px">wide</p><img src="missing.png" alt=""><script>console.error('one'); undefined.two</script>
            """u8.ToArray(), new(320));
        Assert.Equal(["error: one", "failed: missing.png", "script: two"], visit.Complaints.Select(Shortened).Order(StringComparer.Ordinal).Distinct());
        Assert.EndsWith("missing.png", Assert.Single(visit.Requests), StringComparison.Ordinal);
        Assert.Contains("p.null wide", await visit.Ask<string[]>(SticksOut));
    }

    static string Shortened(string complaint) => complaint switch
    {
        _ when complaint.StartsWith("failed: ", StringComparison.Ordinal) => $"failed: {complaint.Split('/')[^1]}",
        _ when complaint.StartsWith("script: ", StringComparison.Ordinal) && complaint.Contains("two", StringComparison.Ordinal) => "script: two",
        _ => complaint,
    };
}
