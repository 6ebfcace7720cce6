using Deque.AxeCore.Commons;
using PuppeteerSharp.Media;

namespace FixScore.Browser.Tests;

/// <summary>axe-core, the rule engine that most accessibility checkers run on, finds nothing: its rules for WCAG 2.2 A and AA and its best practices.</summary>
[Collection(Chromium.Shared)]
public sealed class AxeTests(Chromium chromium)
{
    const string Run = """
        async () => (await axe.run(document, { resultTypes: ['violations'] })).violations
            .flatMap(rule => rule.nodes.map(node => `${rule.id}: ${rule.help}: ${node.target} ${node.failureSummary.replaceAll('\n', ' ')}`))
        """;

    // Paper has no keys.
    const string KeysOnly = "scrollable-region-focusable: ";

    static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    public static TheoryData<string, int> PagesAndWidths => Pages.At(320, 1024);

    [BrowserTheory]
    [MemberData(nameof(PagesAndWidths))]
    public async Task It_finds_nothing(string name, int width)
    {
        await using var visit = await chromium.Open(name, width);
        await visit.OpenAll();
        await visit.Tab.EvaluateExpressionAsync(Axe);
        foreach (var (media, scheme) in ((MediaType, string)[])[(MediaType.Screen, "light"), (MediaType.Screen, "dark"), (MediaType.Print, "dark")])
        {
            await visit.Show(media, scheme);
            var faults = await visit.Ask<string[]>(Run);
            Found.Nothing(media == MediaType.Screen ? faults : faults.Where(fault => !fault.StartsWith(KeysOnly, StringComparison.Ordinal)), $"{media}, {scheme}");
        }
    }

    [BrowserFact]
    public async Task It_finds_a_picture_without_words()
    {
        await using var visit = await chromium.Open("picture", """<!DOCTYPE html><html lang="en"><title>t</title><main><h1>t</h1><img src="data:,"></main></html>"""u8.ToArray(), 320);
        await visit.Tab.EvaluateExpressionAsync(Axe);
        Assert.StartsWith("image-alt: ", Assert.Single(await visit.Ask<string[]>(Run)), StringComparison.Ordinal);
    }
}
