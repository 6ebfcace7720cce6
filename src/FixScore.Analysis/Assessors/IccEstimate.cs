namespace FixScore.Analysis.Assessors;

/// <summary>An intraclass correlation with the limits of its 95 % confidence interval.</summary>
/// <param name="Value">The coefficient; may be below 0.</param>
/// <param name="Low">The lower limit.</param>
/// <param name="High">The upper limit.</param>
public readonly record struct IccEstimate(double Value, double Low, double High)
{
    /// <summary>The same for the mean of several ratings, by the formula of C. Spearman and W. Brown.</summary>
    internal IccEstimate OfMean(int ratings) => new(SteppedUp(Value, ratings), SteppedUp(Low, ratings), SteppedUp(High, ratings));

    static double SteppedUp(double value, int ratings) => ratings * value / (1 + (ratings - 1) * value);
}
