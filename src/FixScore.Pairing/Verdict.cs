namespace FixScore.Pairing;

/// <summary>What swap trials say about a part and the main board, or about a tie (<see cref="Ties.PairTies"/>), in one context.</summary>
public enum Verdict
{
    /// <summary>Tied: every explanation of the trials needs it.</summary>
    Paired,

    /// <summary>Not tied: no explanation of the trials has it.</summary>
    Cleared,

    /// <summary>It was foreign (a tie: broken) in a trial, and the trials can be explained with and without it.</summary>
    Suspect,

    /// <summary>It was foreign (a tie: broken) in no trial.</summary>
    Untested,
}
