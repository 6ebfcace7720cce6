using PuppeteerSharp.Media;

namespace FixScore.Browser.Tests;

/// <summary>Pages load whole from one file and fit the window.</summary>
[Collection(Chromium.Shared)]
public sealed class LoadingTests(Chromium chromium)
{
    // Elements that stick out of the window to the right, where the document can be scrolled there.
    const string SticksOut = """
        () => {
            const { scrollWidth, clientWidth } = document.documentElement;
            if (scrollWidth <= clientWidth) return [];
            return [...document.querySelectorAll('body *')].filter(each => each.getBoundingClientRect().right > clientWidth)
                .map(each => `${each.localName} ${each.getAttribute('class') ?? ''} ${each.textContent.slice(0, 40)}`).concat(`${scrollWidth} > ${clientWidth}`);
        }
        """;

    // Words of a drawing on each other. Slanted words are left out, for the boxes around them overlap though they do not. Names that were cut run out below the points, which have a rim in the colour of the paper.
    const string Overlaps = """
        () => [...document.querySelectorAll('svg')].flatMap(drawing => {
            const words = [...drawing.querySelectorAll('text:not([transform])')].filter(each => !each.textContent.endsWith('\u2026')).map(each => [each.textContent, each.getBoundingClientRect()]);
            return words.flatMap(([one, a], at) => words.slice(at + 1)
                .filter(([, b]) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom).map(([other]) => `${one} | ${other}`));
        })
        """;

    // Text in so little room that it stands letter under letter; headings of columns are hidden in narrow windows.
    const string Squeezed = """
        () => [...document.querySelectorAll('caption, tbody th, td, p, li, summary')]
            .filter(each => each.checkVisibility() && each.textContent.length > 5 && each.getBoundingClientRect().width < 3 * parseFloat(getComputedStyle(each).fontSize))
            .map(each => `${each.localName} ${each.textContent}`)
        """;

    static readonly (MediaType, string)[] Views = [(MediaType.Screen, "light"), (MediaType.Screen, "dark"), (MediaType.Print, "light")];

    public static TheoryData<string, int> PagesAndWidths => Pages.At(Pages.Widths);

    [BrowserTheory]
    [MemberData(nameof(PagesAndWidths))]
    public async Task It_loads_without_a_complaint_or_a_request_and_fits_on_screen_in_the_dark_and_on_paper(string name, int width)
    {
        await using var visit = await chromium.Open(name, width);
        Assert.NotEqual("", await visit.Ask<string>("() => document.title"));
        foreach (var (media, scheme) in Views)
        {
            await visit.Show(media, scheme);
            Found.Nothing(await visit.Ask<string[]>(SticksOut), $"sticks out: {media}, {scheme}");
            if (media == MediaType.Screen) Found.Nothing(await visit.Ask<string[]>(Squeezed), $"squeezed: {scheme}");
            Found.Nothing(await visit.Ask<string[]>(Overlaps), $"overlaps: {media}, {scheme}");
        }
        Found.Nothing(visit.Complaints, "complaints");
        Found.Nothing(visit.Requests, "requests");
    }

    [BrowserFact]
    public async Task Faults_of_that_kind_are_seen()
    {
        await using var visit = await chromium.Open("faults", """
            <!DOCTYPE html><title>t</title><p style="width: 600px">wide</p><p style="width: 1em">narrow</p><svg><text y="9">over</text><text y="9">under</text></svg><img src="missing.png" alt=""><script>console.error('one'); undefined.two</script>
            """u8.ToArray(), 320);
        Assert.Contains("console: one", visit.Complaints);
        Assert.Contains(visit.Complaints, complaint => complaint.StartsWith("script: ", StringComparison.Ordinal));
        Assert.Contains(visit.Complaints, complaint => complaint.StartsWith("failed: ", StringComparison.Ordinal));
        Assert.EndsWith("missing.png", Assert.Single(visit.Requests), StringComparison.Ordinal);
        Assert.Contains("p  wide", await visit.Ask<string[]>(SticksOut));
        Assert.Equal(["p narrow"], await visit.Ask<string[]>(Squeezed));
        Assert.Equal(["over | under"], await visit.Ask<string[]>(Overlaps));
    }
}
