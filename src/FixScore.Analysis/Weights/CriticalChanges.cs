using System.Collections.Immutable;

namespace FixScore.Analysis.Weights;

/// <summary>The smallest change of any one weight that makes any two units tie under the weighted sum. Exact. More is better.</summary>
/// <remarks>
/// <para>Source: Triantaphyllou and Sanchez, A sensitivity analysis approach for some deterministic multi-criteria
/// decision-making methods, Decision Sciences 28, 1997. For units i before j: (Pi - Pj) / (aik - ajk) is taken from weight k,
/// the other weights stay. The weights are used as given and need not sum to 1; dividing them all by their new sum
/// changes no order.</para>
/// <para>Two level units need no change: theirs is 0. Immutable and thread safe.</para>
/// </remarks>
/// <param name="Changes">Every pair from the best unit on, each with every criterion.</param>
/// <param name="ForTop">The feasible change, smallest relative to its weight, that unseats the best unit; of equal ones the first. <c>null</c> when there is none.</param>
/// <param name="ForAny">The same for any two units.</param>
public sealed record CriticalChanges(ImmutableArray<CriticalChange> Changes, CriticalChange? ForTop, CriticalChange? ForAny)
{
    /// <summary>Finds the changes.</summary>
    /// <param name="table">Exact comparable values.</param>
    /// <param name="weights">Weights, one for each criterion, 0 or more.</param>
    /// <exception cref="ArgumentException">A value is open, there is no unit or criterion, or the weights do not fit or are all 0.</exception>
    public static CriticalChanges Of(UnitTable table, ImmutableArray<decimal> weights)
    {
        var (values, given) = (new WeightTable(table), WeightTable.Checked(table, weights));
        var order = values.Order(given);
        var changes = Pairs(order).SelectMany(pair => OfPair(values, given, pair)).ToImmutableArray();
        return new(changes, Smallest(changes.Where(change => change.Pair.Ahead == order[0])), Smallest(changes));
    }

    static IEnumerable<UnitPair> Pairs(int[] order) =>
        from place in Enumerable.Range(0, order.Length)
        from behind in order.Skip(place + 1)
        select new UnitPair(order[place], behind);

    static IEnumerable<CriticalChange> OfPair(WeightTable values, Fraction[] weights, UnitPair pair)
    {
        var leads = values.Lead(pair.Ahead, pair.Behind);
        var lead = leads.Zip(weights, (each, weight) => each * weight).Sum();
        return leads.Select((part, criterion) => CriticalChange.Of(pair, criterion, lead, part, weights[criterion]));
    }

    static CriticalChange? Smallest(IEnumerable<CriticalChange> changes) =>
        changes.Where(change => change is { IsFeasible: true, Relative: not null }).MinBy(change => Fraction.Abs(change.Relative!.Value));
}
