using System.Text.Json;
using Deque.AxeCore.Commons;

namespace FixScore.Browser.Tests;

/// <summary>axe-core, the rule engine that most accessibility checkers run on, finds nothing: its rules for WCAG 2.2 A and AA and its best practices.</summary>
[Collection(Chromium.Shared)]
public sealed class AxeTests(Chromium chromium)
{
    const string Run = """
        async () => (await axe.run(document, { resultTypes: ['violations'] })).violations
            .flatMap(rule => rule.nodes.map(node => `${rule.id}: ${rule.help}: ${node.target} ${node.failureSummary.replaceAll('\n', ' ')}`))
        """;

    static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    public static TheoryData<string, int, string> PagesWidthsAndSchemes =>
        [.. from page in Pages.All from width in (int[])[320, 1024] from scheme in View.Schemes select (page.Name, width, scheme)];

    [BrowserTheory]
    [MemberData(nameof(PagesWidthsAndSchemes))]
    public async Task It_finds_nothing(string name, int width, string scheme)
    {
        await using var visit = await chromium.Open(name, new(width, scheme));
        await visit.Ask<JsonElement?>("() => { for (const folded of document.querySelectorAll('details')) folded.open = true }");
        Assert.Empty(await Violations(visit));
    }

    [BrowserFact]
    public async Task It_finds_a_picture_without_words()
    {
        await using var visit = await chromium.Open("picture", () => """<!DOCTYPE html><html lang="en"><title>t</title><main><h1>t</h1><img src="data:,"></main></html>"""u8.ToArray(), new(320));
        Assert.StartsWith("image-alt: ", Assert.Single(await Violations(visit)), StringComparison.Ordinal);
    }

    static async Task<string[]> Violations(Visit visit)
    {
        await visit.Tab.EvaluateExpressionAsync(Axe);
        return await visit.Ask<string[]>(Run);
    }
}
