namespace FixScore;

/// <summary>A plugin did not return in time. There is no result, whatever the mode.</summary>
/// <remarks>A kind of cancellation, so that whatever passes on cancellation passes it on and nobody takes it for the fault of one leaf.</remarks>
/// <param name="plugin">Id of the plugin.</param>
/// <param name="what">What was called.</param>
/// <param name="limit">How long it had.</param>
public sealed class PluginTimeoutException(string plugin, string what, TimeSpan limit)
    : OperationCanceledException(FormattableString.Invariant($"The plugin {plugin} did not return within {limit:g} from {what}."))
{
    /// <summary>Id of the plugin.</summary>
    public string Plugin { get; } = plugin;

    /// <summary>What was called, such as <c>the criterion acme.part-marking</c>.</summary>
    public string What { get; } = what;

    /// <summary>How long it had.</summary>
    public TimeSpan Limit { get; } = limit;
}

/// <summary>A plugin that gave up as if it had been asked to. Nobody asked: a fault of the plugin, not the end of the run.</summary>
sealed class UnaskedCancellationException(Exception inner) : Exception("A plugin cancelled a run that nobody cancelled.", inner);
