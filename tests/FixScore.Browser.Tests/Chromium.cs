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

    /// <summary>One of the pages, loaded.</summary>
    internal Task<Visit> Open(string name, View view) => Open(name, Pages.All.Single(page => page.Name == name).Render, view);

    /// <summary>Any page, loaded from a file as a reader has it.</summary>
    internal async Task<Visit> Open(string name, Func<byte[]> render, View view)
    {
        var file = Path.Combine(folder.FullName, name + ".html");
        if (!File.Exists(file)) await File.WriteAllBytesAsync(file, render());
        var tab = await browser!.NewPageAsync();
        await tab.SetViewportAsync(new ViewPortOptions { Width = view.Width, Height = 800 });
        await tab.EmulateMediaTypeAsync(view.Media);
        await tab.EmulateMediaFeaturesAsync([new MediaFeatureValue { MediaFeature = MediaFeature.PrefersColorScheme, Value = view.Scheme }]);
        await tab.SetJavaScriptEnabledAsync(view.Scripts);
        var visit = new Visit(tab);
        await tab.GoToAsync(new Uri(file).AbsoluteUri, WaitUntilNavigation.Networkidle0);
        return visit;
    }
}

/// <summary>Tests that share the browser, one after the other.</summary>
[CollectionDefinition(Chromium.Shared)]
public sealed class SharedChromium : ICollectionFixture<Chromium>;
