using System.Collections.Immutable;

namespace FixScore.Analysis.Aggregating;

/// <summary>Which weight speaks for one unit over another: the base of rules that let no criterion make up for another.</summary>
/// <remarks>
/// Criteria are the voters, weights their number. OECD and JRC, Handbook on Constructing Composite Indicators (2008),
/// step 6, non-compensatory multi-criteria approach; H. P. Young, Condorcet's theory of voting, APSR 82(4), 1988 (from memory).
/// Immutable and thread safe.
/// </remarks>
/// <param name="Units">Names of the units.</param>
/// <param name="Support">Row over column: the sum of weights of the criteria where the row is better, and half of those where both are level; 0 with itself.</param>
public sealed record SupportMatrix(ImmutableArray<string> Units, ImmutableArray<ImmutableArray<decimal>> Support)
{
    /// <summary>Counts the weights that speak for each unit over each other.</summary>
    /// <param name="table">Exact values, more is better.</param>
    /// <param name="weights">Weights, one for each criterion, 0 or more; taken as they are.</param>
    /// <exception cref="ArgumentException">A value is open, or weights do not fit or all are 0.</exception>
    public static SupportMatrix Of(UnitTable table, ImmutableArray<decimal> weights)
    {
        Weighed.Check(table, weights);
        var rows = table.ExactRows();
        return new(table.Units, [.. rows.Select(over => rows.Select(under => over == under ? 0m : For(over, under, weights)).ToImmutableArray())]);
    }

    /// <summary>The weight that speaks for a unit over another, by number.</summary>
    public decimal this[int over, int under] => Support[over][under];

    /// <summary>Points by J.-C. de Borda's rule: for each criterion its weight times the units left behind, one half for each that is level. More is better.</summary>
    public ImmutableArray<decimal> Borda() => [.. Support.Select(row => row.Sum())];

    /// <summary>Points by A. H. Copeland's rule: units that fewer weights speak for than against, less those the other way. More is better.</summary>
    public ImmutableArray<int> Copeland() =>
        [.. Support.Select((row, over) => row.Select((support, under) => support.CompareTo(this[under, over])).Sum())];

    /// <summary>The support of a whole order, best unit first: the sum over all pairs in it.</summary>
    /// <param name="order">Numbers of units.</param>
    public decimal SupportOf(ImmutableArray<int> order) =>
        order.Select((over, place) => order.Skip(place + 1).Sum(under => this[over, under])).Sum();

    /// <summary>The orders with the most support, by J. G. Kemeny's rule.</summary>
    /// <param name="most">How many of them to list.</param>
    /// <exception cref="InvalidOperationException">There are more than <see cref="KemenyOrders.MostUnits"/> units.</exception>
    public KemenyOrders Kemeny(int most = 1000) => new KemenySearch(this).Best(most);

    static decimal For(decimal[] over, decimal[] under, ImmutableArray<decimal> weights)
    {
        var sum = 0m;
        for (var criterion = 0; criterion < weights.Length; criterion++)
            sum += over[criterion] > under[criterion] ? weights[criterion] : over[criterion] == under[criterion] ? weights[criterion] / 2m : 0m;
        return sum;
    }
}
