namespace FixScore.Records;

/// <summary>Whether a part was reached.</summary>
public enum Reach
{
    /// <summary>Nobody tried.</summary>
    NotTried,

    /// <summary>It cannot be reached.</summary>
    NotPossible,
}
