using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace FixScore.Browser.Tests;

/// <summary>One browser for all tests, with the pages in a folder of its own.</summary>
public sealed class Chromium : IAsyncLifetime
{
    public const string Shared = "one browser";

    readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("fixscore-pages-");
    IBrowser? browser;

    internal static string? Lacking => Installed.Browser is null ? "Chromium is not installed: apt-get install chromium, or name it in FIXSCORE_CHROMIUM." : null;

    public async Task InitializeAsync()
    {
        if (Lacking is not null) return;
        // As root, as in a container, the sandbox refuses to start; only our own pages are opened.
        browser = await Puppeteer.LaunchAsync(new LaunchOptions
        {
            ExecutablePath = Installed.Browser,
            Headless = true,
            DefaultViewport = null,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-background-networking", "--no-first-run"],
        });
    }

    public async Task DisposeAsync()
    {
        if (browser is not null) await browser.CloseAsync();
        folder.Delete(recursive: true);
    }

    /// <summary>One of the pages, loaded into a window of some width in CSS pixels.</summary>
    internal Task<Visit> Open(string name, int width, bool scripts = true) => Open(name, Pages.Render(name), width, scripts);

    /// <summary>Any page, loaded from a file as a reader has it.</summary>
    internal async Task<Visit> Open(string name, byte[] page, int width, bool scripts = true)
    {
        var file = Path.Combine(folder.FullName, name + ".html");
        if (!File.Exists(file)) await File.WriteAllBytesAsync(file, page);
        var tab = await browser!.NewPageAsync();
        await tab.SetViewportAsync(new ViewPortOptions { Width = width, Height = width * 9 / 16 });
        await tab.SetJavaScriptEnabledAsync(scripts);
        var visit = new Visit(tab);
        await visit.Show(MediaType.Screen);
        await tab.GoToAsync(new Uri(file).AbsoluteUri, WaitUntilNavigation.Load);
        return visit;
    }
}

/// <summary>Tests that share the browser, one after the other.</summary>
[CollectionDefinition(Chromium.Shared)]
public sealed class SharedChromium : ICollectionFixture<Chromium>;
