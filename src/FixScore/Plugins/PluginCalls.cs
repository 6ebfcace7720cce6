namespace FixScore.Plugins;

/// <summary>Calls into plugin files: each on a thread that is watched, so that one that never returns is named and waited for no longer. Thread safe.</summary>
sealed class PluginCalls(PluginTerms terms)
{
    readonly Lock gate = new();
    readonly Stack<CallThread> idle = [];

    /// <summary>Calls and hands back what comes of it, exceptions as well.</summary>
    /// <exception cref="PluginTimeoutException">It took too long.</exception>
    public T Run<T>(PluginCall call, CancellationToken cancellation, Func<T> work)
    {
        var (thread, job) = (Take(), new CallJob<T>(work));
        if (!thread.Run(job, terms.Limit)) throw new PluginTimeoutException(call.Plugin, call.What, terms.Limit);
        lock (gate) idle.Push(thread);
        terms.Meter?.Count(call, job.Allocated);
        return job.Result(cancellation);
    }

    CallThread Take()
    {
        lock (gate) return idle.TryPop(out var thread) ? thread : new();
    }
}

/// <summary>What is called.</summary>
/// <param name="Plugin">Id of the plugin.</param>
/// <param name="What">What of it.</param>
readonly record struct PluginCall(string Plugin, string What)
{
    public override string ToString() => $"{Plugin}: {What}";
}
