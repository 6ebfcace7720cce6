namespace FixScore.Scoring;

/// <summary>How far the low end of the total rises if a row had its maximum, all else as it is; 0 where the question does not arise.</summary>
sealed class Headroom(Row root, GateKeeper gates)
{
    readonly decimal total = gates.CapLow(root.Value.Low, row => row.Value.Low);

    public decimal Of(Row row)
    {
        if (row.State == RowState.SkippedAsNotApplicable || row.State == RowState.Counts && row.Value.Low == row.Node.Scale.Max) return 0m;
        var raised = new Dictionary<Row, decimal> { [row] = row.Node.Scale.Max };
        decimal LowOf(Row each) => raised.TryGetValue(each, out var low) ? low : each.Value.Low;
        for (var above = row.Parent; above is not null; above = above.Parent)
            raised[above] = LowOfAbove(above, row, LowOf);
        return Math.Max(0m, gates.CapLow(LowOf(root), LowOf) - total);
    }

    // A row that was left out would count if it had a value.
    static decimal LowOfAbove(Row above, Row raised, Func<Row, decimal> lowOf)
    {
        var counted = above.Children.Where(child => Combination.Counts(child) || ReferenceEquals(child, raised) && !child.GateOnly).ToArray();
        return counted.Length == 0 ? above.Value.Low : Combination.Of(above, counted, lowOf);
    }
}
