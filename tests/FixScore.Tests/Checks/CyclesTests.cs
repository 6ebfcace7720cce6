using CsCheck;
using FixScore.Checks;

namespace FixScore.Tests.Checks;

public sealed class CyclesTests
{
    [Theory]
    [InlineData("a>b b>c c", "")]
    [InlineData("a>a", "a")]
    [InlineData("a>b b>a", "a b")]
    [InlineData("a>b b>c c>b", "b c")]
    [InlineData("c>b b>c a", "c b")]
    [InlineData("a>c b>a c>b", "a c b")]
    [InlineData("a>b,c b>a c>a", "a b")]
    [InlineData("a>b b>a c>d d>c", "a b|c d")]
    [InlineData("x>a a>y y>a b>b", "a y|b")]
    [InlineData("a>nothing b", "")]
    public void Each_circle_is_told_once_and_begins_with_what_stands_first(string next, string cycles)
    {
        var steps = next.Split(' ').Select(step => step.Split('>')).Select(step => KeyValuePair.Create(step[0], step.Length == 1 ? [] : step[1].Split(',')));
        Assert.Equal(cycles, string.Join("|", Cycles.Of(steps).Select(cycle => string.Join(" ", cycle))));
    }

    // Kahn, "Topological sorting of large networks", Communications of the ACM 5 (1962): what stays when sources are taken away, again and again, holds a circle.
    [Fact]
    public void A_circle_is_told_where_there_is_one_and_nowhere_else() => Networks.Sample(network =>
    {
        var cycles = Cycles.Of(network).ToArray();
        Assert.Equal(HoldsCircle(network), cycles.Length > 0);
        Assert.Equal(cycles.Sum(cycle => cycle.Length), cycles.SelectMany(cycle => cycle).Distinct().Count());
        Assert.All(cycles, cycle => Assert.All(cycle.Zip([.. cycle[1..], cycle[0]]), step => Assert.Contains(step.Second, network[step.First])));
    }, iter: 2000);

    static readonly Gen<Dictionary<string, string[]>> Networks = Gen.Int[1, 9].SelectMany(size =>
        Gen.Int[0, size].Array[0, 3].Array[size].Select(ways => ways.Select((to, from) => (from, to)).ToDictionary(each => $"n{each.from}", each => each.to.Select(i => $"n{i}").ToArray())));

    static bool HoldsCircle(Dictionary<string, string[]> network)
    {
        var left = network.Keys.ToHashSet();
        while (left.RemoveWhere(node => !network[node].Any(left.Contains)) > 0) { }
        return left.Count > 0;
    }
}
