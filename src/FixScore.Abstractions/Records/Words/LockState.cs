namespace FixScore.Records;

/// <summary>State of the boot lock.</summary>
public enum LockState
{
    /// <summary>As delivered.</summary>
    Locked,

    /// <summary>Opened.</summary>
    Unlocked,

    /// <summary>Closed again after it was open.</summary>
    Relocked,
}
