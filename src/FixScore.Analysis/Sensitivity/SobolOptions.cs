namespace FixScore.Analysis.Sensitivity;

/// <summary>How inputs are drawn. Immutable and thread safe.</summary>
/// <param name="Samples">Rows of each of the two base matrices, 2 or more. A function of k inputs is asked samples x (k + 2) times.</param>
/// <param name="Seed">Any number; the same seed gives the same numbers to the last bit on every machine.</param>
public sealed record SobolOptions(int Samples = 16_384, long Seed = 1)
{
    /// <summary>Threads at most; shows in no result. More than 1 asks for a function that is safe to call from several.</summary>
    public int Threads { get; init; } = 1;

    /// <exception cref="ArgumentOutOfRangeException">Fewer than 2 samples or no thread.</exception>
    internal SobolOptions Checked()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(Samples, 2);
        ArgumentOutOfRangeException.ThrowIfLessThan(Threads, 1);
        return this;
    }
}
