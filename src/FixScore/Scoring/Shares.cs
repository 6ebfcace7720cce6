using FixScore.Numbers;

namespace FixScore.Scoring;

/// <summary>Share and contribution of every row, and how much of the weight is fully known.</summary>
sealed class Shares
{
    const int MostDecimals = 25;

    readonly Dictionary<Row, Share> shares = [];
    Rational known, all;

    public Shares(Row root) => Add(root, new(1m, 1m, root.Value.IsExact ? new(root.Value.Low, root.Value.Low) : new(root.Value.Low, root.Value.High)));

    public Share this[Row row] => shares[row];

    /// <summary>Share of weight whose leaf is fully known, from 0 to 1.</summary>
    public decimal Coverage => all.Sign == 0 ? 0m : (known / all).ToDecimal();

    void Add(Row row, Share share)
    {
        shares[row] = share;
        if (row.Children.Count == 0) Count(row, share.OfWeight);
        else AddChildren(row, share);
    }

    // Coverage looks at weight, whatever came of it: what was skipped as unknown counts as unknown.
    void Count(Row row, Rational weight)
    {
        if (row.State == RowState.SkippedAsNotApplicable) return;
        all += weight;
        if (row.IsKnown && row.State == RowState.Counts) known += weight;
    }

    void AddChildren(Row row, Share share)
    {
        var counted = row.Children.Where(Combination.Counts).ToArray();
        var weights = new Weighing(row);
        var rest = share.Contribution;
        foreach (var child in row.Children)
        {
            var ofTotal = Combination.Counts(child) ? share.OfTotal * weights.OfTotal(child, counted) : (Rational?)null;
            var contribution = ofTotal is null || !weights.IsLinear || share.Contribution is null
                ? null
                : ReferenceEquals(child, counted[^1]) ? rest : Product(ofTotal.Value, child.Value);
            rest = Rest(rest, contribution);
            Add(child, new(ofTotal ?? 0m, child.GateOnly ? 0m : share.OfWeight * weights.OfWeight(child), contribution));
        }
    }

    // At most 25 decimals, so that what is left for the last one is exact in decimal.
    static Ends Product(Rational share, Interval value) =>
        new(Rounding.To((share * value.Low).ToDecimal(), MostDecimals, RoundingMode.HalfEven), Rounding.To((share * value.High).ToDecimal(), MostDecimals, RoundingMode.HalfEven));

    static Ends? Rest(Ends? rest, Ends? taken) =>
        rest is { } left && taken is { } part ? new(left.Low - part.Low, left.High - part.High) : rest;
}

/// <summary>What a row has of the whole.</summary>
/// <param name="OfTotal">Share of the total; 0 when it does not count.</param>
/// <param name="OfWeight">Share of the weight, for coverage.</param>
/// <param name="Contribution">Points of the total; <c>null</c> where something above is not linear.</param>
readonly record struct Share(Rational OfTotal, Rational OfWeight, Ends? Contribution);

/// <summary>How a row divides itself among its children.</summary>
readonly struct Weighing(Row row)
{
    readonly bool weighted = row.Rule == RowRule.Aggregate && row.Aggregate is not (Aggregate.Minimum or Aggregate.Sum);
    readonly bool isSum = row.Rule == RowRule.Aggregate && row.Aggregate == Aggregate.Sum;

    /// <summary>Whether the children's shares times their values add up to the row's value.</summary>
    public bool IsLinear => isSum
        || row.Rule == RowRule.Aggregate && row.Aggregate == Aggregate.WeightedArithmetic
        || row.Rule == RowRule.Mean
        || row.Rule == RowRule.Lowest && row.Children.Count(Combination.Counts) == 1;

    public Rational OfTotal(Row child, Row[] counted) =>
        isSum ? child.Weight!.Value : (Rational)WeightOf(child) / Sum(counted);

    // Under a sum a child weighs as much as it can move the total.
    public Rational OfWeight(Row child)
    {
        var siblings = row.Children.Where(each => !each.GateOnly && each.State != RowState.SkippedAsNotApplicable).ToArray();
        if (!siblings.Contains(child)) return 0m;
        if (!isSum) return (Rational)WeightOf(child) / Sum(siblings);
        Rational all = 0m;
        foreach (var each in siblings) all += Span(each);
        return Span(child) / all;
    }

    decimal WeightOf(Row child) => weighted ? child.Weight ?? 1 : 1;

    static Rational Span(Row child) => (Rational)(child.Weight ?? 1) * (child.Node.Scale.Max - child.Node.Scale.Min);

    Rational Sum(Row[] rows)
    {
        Rational sum = 0m;
        foreach (var each in rows) sum += WeightOf(each);
        return sum;
    }
}
