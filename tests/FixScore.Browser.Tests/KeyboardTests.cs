namespace FixScore.Browser.Tests;

/// <summary>All that can be worked with is reached with the Tab key in the order of the page (WCAG 2.2, success criteria 2.1.1 and 2.4.3).</summary>
[Collection(Chromium.Shared)]
public sealed class KeyboardTests(Chromium chromium)
{
    // Numbers in document order of what takes part: links, summaries, fields, regions that scroll.
    const string Expected = """
        () => {
            const scrolls = each => /auto|scroll/.test(getComputedStyle(each).overflow) && (each.scrollWidth > each.clientWidth || each.scrollHeight > each.clientHeight);
            window.all = [...document.querySelectorAll('body *')];
            return all.map((each, at) => [each, at])
                .filter(([each]) => each.matches('a[href], button, input, select, textarea, summary, [tabindex]') || scrolls(each))
                .filter(([each]) => each.checkVisibility({ visibilityProperty: true }))
                .map(([, at]) => at);
        }
        """;

    const string Active = "() => all.indexOf(document.activeElement)";

    const string Outlined = "() => { const style = getComputedStyle(document.activeElement); return style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 1 }";

    public static TheoryData<string, int> PagesAndWidths => Pages.At(320, 720);

    [BrowserTheory]
    [MemberData(nameof(PagesAndWidths))]
    public async Task Tab_reaches_everything_in_order(string name, int width)
    {
        await using var visit = await chromium.Open(name, width);
        await Walk(visit, opening: true);
        await visit.Tab.EvaluateFunctionAsync("() => { document.activeElement.blur(); getSelection().removeAllRanges(); scrollTo(0, 0) }");
        await Walk(visit, opening: false);
        Assert.Equal(0, await visit.Ask<int>("() => document.querySelectorAll('details:not([open])').length"));
    }

    [BrowserFact]
    public async Task What_is_left_out_is_missed()
    {
        await using var visit = await chromium.Open("left-out", """<!DOCTYPE html><title>t</title><a href="#a">a</a><a href="#b" tabindex="-1">b</a>"""u8.ToArray(), 320);
        Assert.Equal((int[])[0, 1], await visit.Ask<int[]>(Expected));
        Assert.Equal((int[])[0], await Reached(visit, 2, _ => Task.CompletedTask));
    }

    // Opening brings new things into the walk right behind the summary, so what is expected is asked after it.
    static async Task Walk(Visit visit, bool opening)
    {
        var first = await visit.Ask<int[]>(Expected);
        var reached = await Reached(visit, 1000, async _ =>
        {
            Assert.True(await visit.Ask<bool>(Outlined), "What has the focus is not outlined.");
            if (opening && await visit.Ask<bool>("() => document.activeElement.localName === 'summary'")) await visit.Tab.Keyboard.PressAsync("Enter");
        });
        Assert.Equal(opening ? await visit.Ask<int[]>(Expected) : first, reached);
    }

    static async Task<List<int>> Reached(Visit visit, int most, Func<int, Task> at)
    {
        var reached = new List<int>();
        for (var presses = 0; presses < most; presses++)
        {
            await visit.Tab.Keyboard.PressAsync("Tab");
            var active = await visit.Ask<int>(Active);
            if (active < 0) break;
            reached.Add(active);
            await at(active);
        }
        return reached;
    }
}
