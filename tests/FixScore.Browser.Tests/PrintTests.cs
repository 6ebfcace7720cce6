using System.Text;
using System.Text.RegularExpressions;
using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace FixScore.Browser.Tests;

/// <summary>On paper nothing stays folded.</summary>
[Collection(Chromium.Shared)]
public sealed partial class PrintTests(Chromium chromium)
{
    // The title and the description of a drawing are heard, not seen.
    const string Hidden = """
        () => [...document.querySelectorAll('details *:not(title, desc)')].filter(each => !each.checkVisibility({ visibilityProperty: true }))
            .map(each => `${each.localName} ${each.textContent.slice(0, 40)}`)
        """;

    public static TheoryData<string> Names => Pages.Names;

    [BrowserTheory]
    [MemberData(nameof(Names))]
    public async Task What_is_folded_on_the_screen_is_open_on_paper(string name)
    {
        await using var visit = await chromium.Open(name, 1024);
        if (await visit.Ask<bool>("() => document.querySelector('details') !== null")) Assert.NotEmpty(await visit.Ask<string[]>(Hidden));
        await visit.Show(MediaType.Print);
        Found.Nothing(await visit.Ask<string[]>(Hidden), "hidden");
    }

    [BrowserTheory]
    [MemberData(nameof(Names))]
    public async Task A_pdf_has_as_many_sheets_as_with_everything_opened_by_hand(string name)
    {
        await using var visit = await chromium.Open(name, 1024);
        var asItIs = await Sheets(visit);
        Assert.True(asItIs > 0);
        await visit.OpenAll();
        Assert.Equal(await Sheets(visit), asItIs);
    }

    static async Task<int> Sheets(Visit visit)
    {
        var pdf = await visit.Tab.PdfDataAsync(new PdfOptions { PreferCSSPageSize = true });
        Assert.True(pdf.AsSpan().StartsWith("%PDF-"u8));
        return Sheet().Count(Encoding.Latin1.GetString(pdf));
    }

    [GeneratedRegex(@"/Type\s*/Page\b")]
    private static partial Regex Sheet();
}
