using System.Collections.Immutable;

namespace FixScore.Scoring;

/// <summary>Finds which gates close and caps the total.</summary>
sealed class GateKeeper
{
    readonly ImmutableArray<(Gate Gate, ImmutableArray<Row> Rows, InstancePolicy Instances)> gates;

    public GateKeeper(Profile profile, Row root)
    {
        var rows = root.SelfAndBelow().ToLookup(row => row.Node.Id, StringComparer.Ordinal);
        gates = [.. profile.Gates.Select(gate => (gate, Watched(gate, rows[gate.When.Node]), PolicyOf(profile, gate)))];
    }

    /// <summary>The gates that close, with the ends they cap.</summary>
    public ImmutableArray<ScoreGate> Closed() =>
        [.. from gate in gates
            let value = Value(gate.Rows, gate.Instances, row => row.Value)
            where value is not null && gate.Gate.When.ClosesAt(value.Value.Low)
            select new ScoreGate(gate.Gate.Id, gate.Gate.Cap, gate.Gate.Reason, gate.Gate.When.ClosesAt(value.Value.High) ? GateEnds.Both : GateEnds.Low)];

    /// <summary>The low end of the total when some rows had other low ends.</summary>
    public decimal CapLow(decimal low, Func<Row, decimal> lowOf)
    {
        foreach (var (gate, rows, instances) in gates)
            if (Value(rows, instances, row => lowOf(row)) is { } value && gate.When.ClosesAt(value.Low)) low = Math.Min(low, gate.Cap);
        return low;
    }

    public static Interval Cap(Interval total, ImmutableArray<ScoreGate> closed)
    {
        foreach (var gate in closed)
            total = new(Math.Min(total.Low, gate.Cap), gate.Ends == GateEnds.Both ? Math.Min(total.High, gate.Cap) : total.High);
        return total;
    }

    // The rows whose values decide: the node's own; or for a role its row, else (under an `over` of a group) one for each part.
    static ImmutableArray<Row> Watched(Gate gate, IEnumerable<Row> rows)
    {
        var all = rows.ToArray();
        if (gate.When.Part is not { } role) return [.. all.Take(1)];
        var ofRole = all.Where(row => row.Role == role).ToArray();
        var spread = ofRole.Where(row => row.Parent?.Role is null).ToArray();
        return [.. spread.Length > 0 ? spread : ofRole];
    }

    static InstancePolicy PolicyOf(Profile profile, Gate gate) =>
        profile.Nodes.Where(node => node.Over is not null && node.SelfAndBelow().Any(below => below.Id == gate.When.Node))
            .Select(node => node.Over!.Instances).FirstOrDefault();

    // Rows of alternative sets are all possible, so that their hull decides; several parts of one role follow the policy.
    static Interval? Value(ImmutableArray<Row> rows, InstancePolicy instances, Func<Row, Interval> valueOf)
    {
        var counted = rows.Where(row => row.State == RowState.Counts).ToArray();
        if (counted.Length == 0) return null;
        var values = counted.Select(valueOf).ToArray();
        if (counted.Length == 1) return values[0];
        if (counted.Any(row => row.Rule is RowRule.Lowest or RowRule.Mean)) return Interval.HullOf(values);
        return instances == InstancePolicy.Lowest
            ? new(values.Min(value => value.Low), values.Min(value => value.High))
            : new(Mean(values, value => value.Low), Mean(values, value => value.High));
    }

    static decimal Mean(Interval[] values, Func<Interval, decimal> end) =>
        Numbers.Means.WeightedArithmetic([.. values.Select(value => (1m, end(value)))]);
}
