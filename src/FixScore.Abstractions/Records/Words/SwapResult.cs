namespace FixScore.Records;

/// <summary>How a function behaved after a swap, best first; <see cref="Untested"/> last.</summary>
public enum SwapResult
{
    /// <summary>As before, nothing said.</summary>
    Works,

    /// <summary>As before, with a message that can be dismissed.</summary>
    Notice,

    /// <summary>As before, with a message that stays.</summary>
    Warning,

    /// <summary>Reduced.</summary>
    Degraded,

    /// <summary>Not at all.</summary>
    Refused,

    /// <summary>Not looked at.</summary>
    Untested,
}
