using System.Collections.Concurrent;
using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace FixScore.Browser.Tests;

/// <summary>A page in a tab, with what the browser said about it.</summary>
sealed class Visit : IAsyncDisposable
{
    readonly ConcurrentQueue<string> complaints = new();
    readonly ConcurrentQueue<string> requests = new();

    public Visit(IPage tab)
    {
        Tab = tab;
        tab.Console += (_, said) => complaints.Enqueue($"console: {said.Message.Text}");
        tab.PageError += (_, error) => complaints.Enqueue($"script: {error.Message}");
        tab.RequestFailed += (_, failed) => complaints.Enqueue($"failed: {failed.Request.Url}");
        tab.Request += (_, asked) => requests.Enqueue(asked.Request.Url);
    }

    public IPage Tab { get; }

    /// <summary>Messages in the console, errors of scripts, requests that failed.</summary>
    public IReadOnlyCollection<string> Complaints => complaints;

    /// <summary>What was asked for besides the page itself.</summary>
    public IEnumerable<string> Requests => requests.Where(url => url != Tab.Url);

    /// <summary>Shows the page as on a screen or on paper, to a reader who prefers a colour scheme.</summary>
    /// <remarks>One message for both: the driver has one for each, and each undoes the other. Screen is what is shown unless told: told, it would be printed, too.</remarks>
    public Task Show(MediaType media, string scheme = "light") => Tab.Client.SendAsync("Emulation.setEmulatedMedia",
        new { media = media == MediaType.Print ? "print" : "", features = new[] { new { name = "prefers-color-scheme", value = scheme } } });

    /// <summary>Runs a function in the page.</summary>
    public Task<T> Ask<T>(string function) => Tab.EvaluateFunctionAsync<T>(function);

    /// <summary>Unfolds everything.</summary>
    public Task OpenAll() => Tab.EvaluateFunctionAsync("() => { for (const folded of document.querySelectorAll('details')) folded.open = true }");

    public async ValueTask DisposeAsync() => await Tab.CloseAsync();
}
