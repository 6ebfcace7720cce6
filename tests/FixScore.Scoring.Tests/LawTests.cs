using System.Globalization;
using CsCheck;
using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Scoring.Tests;

/// <summary>Laws that hold for any profile and record: bounded, monotone, unknown only widens, order of nodes is of no account.</summary>
public sealed class LawTests
{
    static readonly Gen<string> Aggregates = 
        Gen.Int[0, 3].Select(i => ((string[])["weighted-arithmetic", "weighted-geometric", "weighted-harmonic", "minimum"])[i]);
    static readonly Gen<decimal> Points = Gen.Int[0, 10_000].Select(n => n / 100m);
    static readonly Gen<int[]> Weights = Gen.Int[1, 60].Array[4];
    static readonly Gen<(string Outer, string Inner, int[] Weights, decimal[] Points, bool Gated)> Cases =
        Gen.Select(Aggregates, Aggregates, Weights, Points.Array[4], Gen.Bool);

    static string Text(int weight) => weight.ToString(CultureInfo.InvariantCulture);

    static Profile Profile(string outer, string inner, int[] weights, bool gated, bool swapped = false)
    {
        string[] leaves = [Make.Leaf("c", Text(weights[2]), "t.c"), Make.Leaf("d", Text(weights[3]), "t.d")];
        if (swapped) Array.Reverse(leaves);
        var group = $$"""{ "id": "inner", "weight": {{weights[0]}}, "aggregate": "{{inner}}", "of": [{{string.Join(",", leaves)}}] }""";
        string[] top = [group, Make.Leaf("a", Text(weights[1]), "t.a")];
        if (swapped) Array.Reverse(top);
        return Make.Profile(Make.Group(outer, top), gated ? """ "gates": [ { "id": "g", "when": { "node": "c", "below": 30 }, "cap": 40, "reason": "r" } ] """ : "");
    }

    static RecordBuilder Record(Quantity?[] points)
    {
        var record = Make.Record();
        foreach (var (name, value) in ((string[])["t.a", "t.c", "t.d"]).Zip(points))
            if (value is { } known) record.Observe(name, known);
        return record;
    }

    [Fact]
    public void A_total_is_bounded_by_its_lowest_and_highest_leaf_before_gates() => Cases.Sample(each =>
    {
        Quantity?[] points = [each.Points[0], each.Points[1], each.Points[2]];
        var total = Record(points).Score(Profile(each.Outer, each.Inner, each.Weights, false)).Total;
        return total.IsExact && total.Low >= each.Points[..3].Min() && total.High <= each.Points[..3].Max();
    }, iter: 400);

    [Fact]
    public void Raising_a_leaf_never_lowers_the_total() => Gen.Select(Cases, Points, Gen.Int[0, 2]).Sample((each, higher, which) =>
    {
        Quantity?[] points = [each.Points[0], each.Points[1], each.Points[2]];
        var profile = Profile(each.Outer, each.Inner, each.Weights, each.Gated);
        var before = Record(points).Score(profile).Total.Low;
        points[which] = Math.Max(higher, each.Points[which]);
        return Record(points).Score(profile).Total.Low >= before;
    }, iter: 400);

    [Fact]
    public void Forgetting_an_observation_only_widens_the_total() => Gen.Select(Cases, Gen.Int[0, 2]).Sample((each, which) =>
    {
        Quantity?[] points = [each.Points[0], each.Points[1], each.Points[2]];
        var profile = Profile(each.Outer, each.Inner, each.Weights, each.Gated);
        var known = Record(points).Score(profile).Total;
        points[which] = null;
        return Record(points).Score(profile).Total.Contains(known);
    }, iter: 400);

    [Fact]
    public void A_range_gives_exactly_the_totals_of_its_ends() => Gen.Select(Cases, Points).Sample((each, other) =>
    {
        var profile = Profile(each.Outer, each.Inner, each.Weights, each.Gated);
        var (low, high) = (Math.Min(other, each.Points[1]), Math.Max(other, each.Points[1]));
        var ranged = Record([each.Points[0], new Quantity(low, high), each.Points[2]]).Score(profile).Total;
        var atLow = Record([each.Points[0], low, each.Points[2]]).Score(profile).Total.Low;
        var atHigh = Record([each.Points[0], high, each.Points[2]]).Score(profile).Total.High;
        return ranged == new Interval(atLow, atHigh);
    }, iter: 400);

    [Fact]
    public void The_order_of_siblings_changes_no_digit() => Cases.Sample(each =>
    {
        Quantity?[] points = [each.Points[0], each.Points[1], each.Points[2]];
        return Record(points).Score(Profile(each.Outer, each.Inner, each.Weights, each.Gated)).Total
            == Record(points).Score(Profile(each.Outer, each.Inner, each.Weights, each.Gated, swapped: true)).Total;
    }, iter: 400);

    [Fact]
    public void Contributions_add_up_wherever_they_are_stated() => Gen.Select(Weights, Points.Array[4]).Sample((weights, points) =>
    {
        var score = Record([points[0], new Quantity(Math.Min(points[1], points[3]), Math.Max(points[1], points[3])), points[2]])
            .Score(Profile("weighted-arithmetic", "weighted-arithmetic", weights, false));
        var leaves = score.Nodes.Where(node => node.Criterion is not null).ToArray();
        return leaves.Sum(leaf => leaf.Contribution!.Value.Low) == score.BeforeGates.Low
            && leaves.Sum(leaf => leaf.Contribution!.Value.High) == score.BeforeGates.High;
    }, iter: 400);
}
