namespace FixScore.Records;

/// <summary>How an operation went on one unit.</summary>
public enum OutcomeResult
{
    /// <summary>Without harm.</summary>
    Clean,

    /// <summary>Something was damaged.</summary>
    Damaged,

    /// <summary>It could not be done.</summary>
    Failed,
}
