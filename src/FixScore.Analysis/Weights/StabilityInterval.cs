namespace FixScore.Analysis.Weights;

/// <summary>Where a weight may go before an order breaks, as a share of all weights. Exact; ends included.</summary>
/// <param name="Low">The least share.</param>
/// <param name="High">The greatest share.</param>
/// <param name="AtLow">The pair that ties at the low end and changes places below it; <c>null</c> when the end is 0, the least a weight can be.</param>
/// <param name="AtHigh">The pair that ties at the high end and changes places above it; <c>null</c> when the end is 1.</param>
public readonly record struct StabilityInterval(Fraction Low, Fraction High, UnitPair? AtLow, UnitPair? AtHigh)
{
    /// <summary>Whether a share lies between the ends, ends included.</summary>
    public bool Contains(Fraction share) => Low <= share && share <= High;

    /// <summary>What is left where the lead of a pair, low at share 0 and high at share 1, is not below 0.</summary>
    internal StabilityInterval Where(UnitPair pair, Fraction atZero, Fraction atOne)
    {
        var slope = atOne - atZero;
        if (slope.Sign == 0) return this;
        var tie = -atZero / slope;
        if (slope.Sign > 0) return tie > Low ? this with { Low = tie, AtLow = pair } : this;
        return tie < High ? this with { High = tie, AtHigh = pair } : this;
    }
}

/// <summary>Two units by number.</summary>
/// <param name="Ahead">The one with the better score under the weights as given; of level ones the first in the table.</param>
/// <param name="Behind">The other.</param>
public readonly record struct UnitPair(int Ahead, int Behind);
