namespace FixScore.Analysis.Sensitivity;

/// <summary>How the points that bands and levels give are varied: all points of a criterion by one common factor.</summary>
/// <remarks>
/// What a band gives above the least of the scale is multiplied by the factor and cut off at the most of the scale. So the order
/// of bands stays, though bands may become level at the top; what gives the least gives it still, and a straight line between
/// the least and the most can sink but not rise. Factors are a grid of equal steps, each as likely, since the criterion is asked anew for each. The range is a convention (own choice, no source).
/// Immutable and thread safe.
/// </remarks>
/// <param name="Range">Half the width of the range of factors: they go from 1 - range to 1 + range. 0 to 1.</param>
/// <param name="Levels">How many factors there are; odd, so that 1 is one of them, 3 or more.</param>
public sealed record BandVariation(decimal Range = 0.1m, int Levels = 5)
{
    /// <summary>The factors, rising; 1 is the middle one.</summary>
    public IEnumerable<decimal> Factors => Enumerable.Range(0, Levels).Select(level => 1m - Range + (2m * Range * level / (Levels - 1)));

    /// <summary>Number of the factor 1.</summary>
    internal int Unmoved => Levels / 2;

    /// <summary>Points moved by a factor.</summary>
    internal static decimal Moved(decimal points, decimal factor, Scale scale) =>
        Math.Clamp(scale.Min + (factor * (points - scale.Min)), scale.Min, scale.Max);

    /// <exception cref="ArgumentOutOfRangeException">The range is not 0 to 1, or the levels are even or fewer than 3.</exception>
    internal BandVariation Checked()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(Range, 0m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Range, 1m);
        ArgumentOutOfRangeException.ThrowIfLessThan(Levels, 3);
        return int.IsOddInteger(Levels) ? this : throw new ArgumentOutOfRangeException(nameof(Levels), Levels, "An odd number is asked, so that bands as they are count among those tried.");
    }
}
