using System.Collections.Immutable;
using System.Numerics;
using FixScore.Numbers;
using FixScore.Scoring;

namespace FixScore.Analysis.Generations;

/// <summary>Shares out the difference of two totals before gates among the lines that changed, by their Shapley values.</summary>
static class Shapley
{
    const int MostPlayers = 12;

    // Digits that a decimal always has room for.
    const int Digits = 28;

    const int MostDecimals = 20;

    public static IEnumerable<NodeDelta> Of(RecordDocument old, RecordDocument @new, Profile profile, ImmutableArray<string> paths, CancellationToken cancellation)
    {
        var before = new ColumnTree(new RecordCase(old.Record, cancellation), profile, paths, cancellation);
        var after = new ColumnTree(new RecordCase(@new.Record, cancellation), profile, paths, cancellation);
        var (was, now) = (before.Values, after.Values);
        var players = Players(paths, was, now);
        var totals = new Interval[1 << players.Length];
        for (var set = 0; set < totals.Length; set++)
        {
            cancellation.ThrowIfCancellationRequested();
            totals[set] = after.With(Mixed(was, now, players, set));
        }
        var (lows, highs) = (Values(players.Length, [.. totals.Select(total => total.Low)]), Values(players.Length, [.. totals.Select(total => total.High)]));
        var titles = profile.Nodes.ToLookup(node => node.Id, node => node.Title ?? (node as LeafNode)?.Criterion.Item.Info.Title ?? node.Id, StringComparer.Ordinal);
        return players.Select((player, i) => new NodeDelta(player.Path, titles[player.Path.Split('/')[^1]].First(), lows[i], highs[i]));
    }

    static ColumnValue[] Mixed(ColumnValue[] was, ColumnValue[] now, (string Path, int[] Columns)[] players, int changed)
    {
        ColumnValue[] mixed = [.. was];
        foreach (var (i, player) in players.Index())
            if ((changed >> i & 1) != 0)
                foreach (var column in player.Columns) mixed[column] = now[column];
        return mixed;
    }

    // Each line that changed on its own; with too many, those below one line of the total together.
    static (string Path, int[] Columns)[] Players(ImmutableArray<string> paths, ColumnValue[] was, ColumnValue[] now)
    {
        int[] changed = [.. Enumerable.Range(0, paths.Length).Where(i => was[i] != now[i])];
        for (var depth = int.MaxValue; ; depth = depth == int.MaxValue ? paths.Max(path => path.Split('/').Length) - 1 : depth - 1)
        {
            var players = changed.GroupBy(i => Cut(paths[i], depth)).Select(group => (group.Key, group.ToArray())).ToArray();
            if (players.Length <= MostPlayers || depth <= 1) return players;
        }
    }

    static string Cut(string path, int depth) => depth == int.MaxValue ? path : string.Join('/', path.Split('/').Take(depth));

    // Each adds what it adds, weighed by how often exactly these others changed before it; the last takes what rounding leaves.
    static decimal[] Values(int players, decimal[] totals)
    {
        var values = new decimal[players];
        var decimals = Decimals(totals);
        for (var player = 0; player < players; player++)
        {
            var sum = (Rational)0m;
            for (var set = 0; set < totals.Length; set++)
                if ((set >> player & 1) == 0) sum += ((Rational)totals[set | (1 << player)] - totals[set]) * Weight(int.PopCount(set), players);
            values[player] = Rounding.To(sum.ToDecimal(), decimals, RoundingMode.HalfEven);
        }
        if (players > 0) values[^1] = totals[^1] - totals[0] - values[..^1].Sum();
        return values;
    }

    // Few enough that sums of the values are exact in decimal, whatever the scale; one digit is for what adds up.
    static int Decimals(decimal[] totals)
    {
        var whole = 2;
        for (var greatest = totals.Max(Math.Abs); greatest >= 1m; greatest /= 10m) whole++;
        return Math.Clamp(Digits - whole, 0, MostDecimals);
    }

    static Rational Weight(int before, int players) => (Rational)1m / Choose(players - 1, before) / players;

    static decimal Choose(int of, int take) => (decimal)Enumerable.Range(1, take).Aggregate(BigInteger.One, (product, i) => product * (of - take + i) / i);
}
