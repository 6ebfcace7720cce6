namespace FixScore.Records;

/// <summary>When a lost function comes back.</summary>
public enum Recovery
{
    /// <summary>When the lock is closed again.</summary>
    OnRelock,

    /// <summary>After a reset.</summary>
    OnReset,

    /// <summary>After service by the maker.</summary>
    OnService,

    /// <summary>Never.</summary>
    Never,
}
