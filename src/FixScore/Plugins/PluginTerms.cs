namespace FixScore;

/// <summary>On which terms plugin files are loaded and called. Immutable and thread safe.</summary>
public sealed record PluginTerms
{
    /// <summary>Pinned files only, a minute a call, nothing measured.</summary>
    public static PluginTerms Usual { get; } = new();

    /// <summary>Whether files that are not pinned, or are not those that were pinned, are loaded all the same. They run with all rights of whoever runs the program.</summary>
    public bool TrustUnpinned { get; init; }

    /// <summary>How long one call of a plugin may take; <see cref="Timeout.InfiniteTimeSpan"/> for ever. Above zero.</summary>
    /// <remarks>
    /// A call that takes longer ends the run by <see cref="PluginTimeoutException"/>, in every mode: no score ever depends on how fast a
    /// machine is. Its thread cannot be ended and goes on in the background, so a program that cares ends its process.
    /// </remarks>
    public TimeSpan Limit { get; init; } = TimeSpan.FromMinutes(1);

    /// <summary>Counts what calls allocate; <c>null</c> to count nothing.</summary>
    public PluginMeter? Meter { get; init; }
}
