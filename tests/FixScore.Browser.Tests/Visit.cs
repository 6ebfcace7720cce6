using System.Collections.Concurrent;
using PuppeteerSharp;

namespace FixScore.Browser.Tests;

/// <summary>A page in a tab, with what the browser said about it.</summary>
sealed class Visit : IAsyncDisposable
{
    readonly ConcurrentQueue<string> complaints = new();
    readonly ConcurrentQueue<string> requests = new();

    public Visit(IPage tab)
    {
        Tab = tab;
        tab.Console += (_, said) => complaints.Enqueue($"{said.Message.Type}: {said.Message.Text}");
        tab.PageError += (_, error) => complaints.Enqueue($"script: {error.Message}");
        tab.RequestFailed += (_, failed) => complaints.Enqueue($"failed: {failed.Request.Url}");
        tab.Request += (_, asked) => requests.Enqueue(asked.Request.Url);
    }

    public IPage Tab { get; }

    /// <summary>Messages in the console, errors of scripts, requests that failed.</summary>
    public IReadOnlyCollection<string> Complaints => complaints;

    /// <summary>What was asked for besides the page itself.</summary>
    public IEnumerable<string> Requests => requests.Where(url => url != Tab.Url);

    /// <summary>Runs a function in the page.</summary>
    public Task<T> Ask<T>(string function, params object[] arguments) => Tab.EvaluateFunctionAsync<T>(function, arguments);

    public async ValueTask DisposeAsync() => await Tab.CloseAsync();
}
