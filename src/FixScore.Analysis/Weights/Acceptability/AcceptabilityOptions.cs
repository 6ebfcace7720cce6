namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>How weights are drawn. Immutable and thread safe.</summary>
/// <param name="Draws">How many draws; 1 or more. The standard error falls with its root.</param>
/// <param name="Seed">Any number; the same seed gives the same numbers to the last bit on every machine.</param>
public sealed record AcceptabilityOptions(int Draws = 100_000, long Seed = 1)
{
    /// <summary>Whether <see cref="SimulatedAcceptability.Wins"/> is wanted too. Work grows with the square of the units.</summary>
    public bool WithWins { get; init; }

    /// <summary>Threads at most; <c>null</c> for as many as the machine runs at once. Shows in no result.</summary>
    public int? Threads { get; init; }

    /// <exception cref="ArgumentOutOfRangeException">No draw or no thread.</exception>
    internal AcceptabilityOptions Checked()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(Draws, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(Threads ?? 1, 1);
        return this;
    }
}
