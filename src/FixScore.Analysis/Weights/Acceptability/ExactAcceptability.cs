using System.Collections.Immutable;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>What share of all weights gives a unit a place, exactly, for up to 3 criteria under the weighted arithmetic mean. More is better.</summary>
/// <remarks>
/// <para>Source: Lahdelma and Salminen, SMAA-2: stochastic multicriteria acceptability analysis for group decision making,
/// Operations Research 49, 2001. The space of weights is cut where two units tie, and the pieces are measured as fractions.</para>
/// <para>Units whose rows are alike are level under all weights: they share the places they take equally. Weights at which
/// others tie have no measure.</para>
/// <para>Values are exact, so a unit that is first anywhere is first at its central weights: its confidence factor is 1.
/// Beyond 3 criteria, with open values, or around given weights: <see cref="SimulatedAcceptability"/>. Immutable and thread safe.</para>
/// </remarks>
/// <param name="Shares">For each unit the share of each place, the first place first; each sums to 1.</param>
/// <param name="Central">For each unit the mean of the weights that make it first, alone or with others; <c>null</c> where none do.</param>
/// <param name="Wins">For each unit the share of weights with which it is above each other, ties counting half; 1/2 against itself.</param>
public sealed record ExactAcceptability(
    ImmutableArray<ImmutableArray<Fraction>> Shares, ImmutableArray<ImmutableArray<Fraction>?> Central, ImmutableArray<ImmutableArray<Fraction>> Wins)
{
    const int MostCriteria = 3;

    /// <summary>Measures the shares. Work grows with the cube of the number of units and more: meant for dozens.</summary>
    /// <param name="table">Exact comparable values on 1 to 3 criteria.</param>
    /// <param name="law"><see cref="WeightLaw.Uniform"/> or <see cref="WeightLaw.Ordered"/>.</param>
    /// <exception cref="ArgumentException">A value is open, there is no unit, no criterion or more than 3, or the law has a centre.</exception>
    public static ExactAcceptability Of(UnitTable table, WeightLaw law)
    {
        var values = new WeightTable(table);
        if (values.Criteria > MostCriteria) throw new ArgumentException("There can be 3 criteria at most.", nameof(table));
        if (law.Shapes.Length != 0) throw new ArgumentException("Around given weights shares can only be simulated.", nameof(law));
        var cuts = new PlaceCuts(values, WeightCell.Of(law, values.Criteria));
        var units = Enumerable.Range(0, values.Units).ToArray();
        var places = units.Select(cuts.Places).ToArray();
        return new([.. places.Select(place => place.Shares)], [.. places.Select(place => place.Central)], [.. units.Select(cuts.Wins)]);
    }
}
