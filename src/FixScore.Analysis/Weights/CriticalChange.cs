namespace FixScore.Analysis.Weights;

/// <summary>The change of one weight, others as they are, at which two units tie; anything more makes them change places.</summary>
/// <param name="Pair">The units.</param>
/// <param name="Criterion">Number of the criterion whose weight changes.</param>
/// <param name="Absolute">What to take from the weight; below 0 it must grow. <c>null</c> when no change makes them tie.</param>
/// <param name="Relative">The same as a share of the weight, 1 being all of it; <c>null</c> as well when the weight is 0.</param>
/// <param name="IsFeasible">Whether the weight is large enough for it: it would not fall below 0.</param>
public sealed record CriticalChange(UnitPair Pair, int Criterion, Fraction? Absolute, Fraction? Relative, bool IsFeasible)
{
    internal static CriticalChange Of(UnitPair pair, int criterion, Fraction lead, Fraction part, Fraction weight)
    {
        if (part.Sign == 0) return new(pair, criterion, null, null, false);
        var change = lead / part;
        return new(pair, criterion, change, weight.Sign == 0 ? null : change / weight, change <= weight);
    }
}
