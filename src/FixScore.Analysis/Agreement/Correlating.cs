using System.Collections.Immutable;
using MathNet.Numerics.Statistics;

namespace FixScore.Analysis.Agreement;

/// <summary>Correlation of exact values.</summary>
/// <remarks>
/// The library's Correlation.Spearman gives tied values the mean of their ranks and is right with ties. It ranks binary
/// values, though, where two decimals that differ may be equal; so ranks are made of decimals, and the library correlates them.
/// </remarks>
static class Correlating
{
    /// <summary>From -1 to 1; <c>null</c> for fewer than two values or where one side is constant.</summary>
    public static double? Pearson(ImmutableArray<decimal> first, ImmutableArray<decimal> second)
    {
        if (IsConstant(first) || IsConstant(second)) return null;
        return Math.Clamp(Correlation.Pearson(first.Select(value => (double)value), second.Select(value => (double)value)), -1, 1);
    }

    static bool IsConstant(ImmutableArray<decimal> values) => values.All(value => value == values[0]);
}
