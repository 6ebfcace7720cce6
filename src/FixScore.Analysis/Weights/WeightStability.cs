using System.Collections.Immutable;

namespace FixScore.Analysis.Weights;

/// <summary>How far one weight may move before units change places under the weighted arithmetic mean. Exact. More is better.</summary>
/// <remarks>
/// <para>The weight goes from 0 to 1 as a share of all; the others keep their proportions and share the rest. Where the given
/// share is 1 the others have no proportions, and share equally. A sole criterion always has share 1.</para>
/// <para>Units that are level must stay so: an order with ties often holds at one point only.</para>
/// <para>Source: sensitivity by proportional change of one weight, common practice since Evans, Decision Sciences 15, 1984
/// (from memory). Immutable and thread safe.</para>
/// </remarks>
/// <param name="Criterion">Number of the criterion whose weight moves.</param>
/// <param name="Share">Its share as given.</param>
/// <param name="Winner">Where the best unit stays best.</param>
/// <param name="Order">Where the whole order stays as it is; never wider than <paramref name="Winner"/>.</param>
public sealed record WeightStability(int Criterion, Fraction Share, StabilityInterval Winner, StabilityInterval Order)
{
    /// <summary>The stability of each weight, in the order of the criteria.</summary>
    /// <param name="table">Exact comparable values.</param>
    /// <param name="weights">Relative weights, one for each criterion, 0 or more.</param>
    /// <exception cref="ArgumentException">A value is open, there is no unit or criterion, or the weights do not fit or are all 0.</exception>
    public static ImmutableArray<WeightStability> Of(UnitTable table, ImmutableArray<decimal> weights)
    {
        var (values, given) = (new WeightTable(table), WeightTable.Checked(table, weights));
        var order = values.Order(given);
        return [.. Enumerable.Range(0, values.Criteria).Select(criterion => new Shift(values, given, criterion).Stability(order))];
    }

    sealed class Shift(WeightTable values, Fraction[] weights, int criterion)
    {
        readonly Fraction _share = weights[criterion] / weights.Sum();
        readonly Fraction[] _others = Others(weights, criterion);

        public WeightStability Stability(int[] order)
        {
            var all = weights.Length == 1 ? new StabilityInterval(1, 1, null, null) : new(0, 1, null, null);
            var first = order.Skip(1).Aggregate(all, (range, other) => Keep(range, order[0], other));
            var whole = order.Zip(order.Skip(1)).Aggregate(all, (range, pair) => Keep(range, pair.First, pair.Second));
            return new(criterion, _share, first, whole);
        }

        StabilityInterval Keep(StabilityInterval range, int ahead, int behind)
        {
            var (pair, zero, one) = (new UnitPair(ahead, behind), Lead(ahead, behind, 0), Lead(ahead, behind, 1));
            var kept = range.Where(pair, zero, one);
            return Lead(ahead, behind, _share).Sign == 0 ? kept.Where(pair, -zero, -one) : kept;
        }

        Fraction Lead(int ahead, int behind, Fraction share) =>
            values.Lead(ahead, behind).Select((lead, i) => lead * (i == criterion ? share : (Fraction.One - share) * _others[i])).Sum();

        static Fraction[] Others(Fraction[] weights, int criterion)
        {
            var rest = weights.Sum() - weights[criterion];
            return [.. weights.Select(weight => rest.Sign == 0 ? new(1, Math.Max(1, weights.Length - 1)) : weight / rest)];
        }
    }
}
