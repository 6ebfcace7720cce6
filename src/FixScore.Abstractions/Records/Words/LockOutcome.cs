namespace FixScore.Records;

/// <summary>How a change of the boot lock went.</summary>
public enum LockOutcome
{
    /// <summary>Done.</summary>
    Done,

    /// <summary>The maker refused.</summary>
    RefusedByMaker,

    /// <summary>It failed.</summary>
    Failed,
}
