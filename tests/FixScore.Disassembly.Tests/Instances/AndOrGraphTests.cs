using FixScore.Records;

namespace FixScore.Disassembly.Tests.Instances;

/// <summary>Best plans in AND/OR graphs: a plan splits a whole into parts, and costs the sum over its splits.</summary>
/// <remarks>
/// A split becomes an operation that waits for plans of both its pieces, so that a plan is done from its leaves up;
/// the whole is reached when one of its splits is done.
/// </remarks>
public sealed class AndOrGraphTests
{
    // A designed instance; optimum found by listing all nine plans (11, 12, 13, 15, 15, 15, 16, 17, 18), independently of this code.
    [Fact]
    public void Complete_disassembly_of_five_parts_over_sixteen_splits_costs_11()
    {
        var record = Splits(
            ("h1", "ABCDE", "A", "BCDE", 4), ("h2", "ABCDE", "AB", "CDE", 6), ("h3", "ABCDE", "ABC", "DE", 5), ("h4", "BCDE", "B", "CDE", 3),
            ("h5", "BCDE", "BC", "DE", 2), ("h6", "BCDE", "BCD", "E", 7), ("h7", "CDE", "C", "DE", 4), ("h8", "CDE", "CD", "E", 1),
            ("h9", "ABC", "A", "BC", 3), ("h10", "ABC", "AB", "C", 2), ("h11", "BCD", "B", "CD", 1), ("h12", "BCD", "BC", "D", 2),
            ("h13", "AB", "A", "B", 2), ("h14", "BC", "B", "C", 5), ("h15", "CD", "C", "D", 3), ("h16", "DE", "D", "E", 4));
        var route = new RecordCase(record).RouteTo("whole", RouteCost.Seconds);
        Assert.Equal((Interval)11, route.Seconds);
        Assert.Equal("h15-h8-h4-h1", route.Way!.Order());
        Assert.True(route.IsOptimal);
    }

    // Cormen, Leiserson, Rivest and Stein, Introduction to Algorithms, matrix-chain multiplication (from memory; recomputed
    // independently of this code): dimensions 30, 35, 15, 5, 10, 20, 25 take 15,125 multiplications, as ((A1(A2A3))((A4A5)A6)).
    [Fact]
    public void The_textbook_chain_of_six_matrices_takes_15125_multiplications()
    {
        int[] sizes = [30, 35, 15, 5, 10, 20, 25];
        var splits = from first in Enumerable.Range(1, 6)
                     from last in Enumerable.Range(first, 7 - first)
                     from cut in Enumerable.Range(first, last - first)
                     select ($"s{first}{cut}{last}", Block(first, last), Block(first, cut), Block(cut + 1, last), sizes[first - 1] * sizes[cut] * sizes[last]);
        var route = new RecordCase(Splits([.. splits])).RouteTo("whole", RouteCost.Seconds);
        Assert.Equal((Interval)15_125, route.Seconds);
        Assert.Equal(["s113", "s136", "s223", "s445", "s456"], route.Way!.Operations.Order(StringComparer.Ordinal));
        Assert.True(route.IsOptimal);

        static string Block(int first, int last) => "123456"[(first - 1)..last];
    }

    static TeardownRecord Splits(params (string Id, string Whole, string One, string Other, int Cost)[] splits)
    {
        var graph = new PrecedenceGraph();
        foreach (var (id, _, one, other, cost) in splits)
            graph.Add(id, cost, any: [.. new[] { one, other }.Where(piece => piece.Length > 1).Select(Of)]);
        return graph.Goal("whole", Of(splits.MaxBy(split => split.Whole.Length).Whole)).Build();

        string[] Of(string piece) => [.. splits.Where(split => split.Whole == piece).Select(split => split.Id)];
    }
}
