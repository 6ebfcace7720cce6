using CsCheck;
using FixScore.Analysis.Generations;
using FixScore.Analysis.Tests.Comparing;

namespace FixScore.Analysis.Tests.Generations;

public sealed class ScoreAttributionTests
{
    // By hand: weights 3 and 1 over 4; 40 to 60 gives 15, 80 to 20 takes 15.
    [Fact]
    public void Under_a_mean_each_line_has_the_difference_of_its_contributions()
    {
        var found = Of(Bench.Profile("p", 3, 1), (40, 80), (60, 20));
        Assert.True(found.IsAdditive);
        Support.Equal([("root/first", 15m), ("root/second", -15m)], found.Deltas.Select(delta => (delta.Node, delta.Low)));
    }

    // L. S. Shapley, A Value for n-Person Games, 1953, by hand for two lines under the geometric mean of (16, 1) and (81, 16):
    // roots 4 before, 9 with the first alone, 16 with the second alone, 36 with both.
    // The first adds ((9 - 4) + (36 - 16)) / 2 = 12.5, the second ((16 - 4) + (36 - 9)) / 2 = 19.5.
    [Fact]
    public void Under_a_geometric_mean_each_line_has_its_shapley_value()
    {
        var found = Of(Bench.Profile("p", 1, 1, "weighted-geometric"), (16, 1), (81, 16));
        Assert.False(found.IsAdditive);
        Support.Equal([("root/first", 12.5m), ("root/second", 19.5m)], found.Deltas.Select(delta => (delta.Node, delta.Low)));
    }

    // The same two values, each of seven equal lines of a group: fourteen lines changed, two groups share the difference.
    [Fact]
    public void With_many_changed_lines_the_nodes_above_them_have_shapley_values()
    {
        string Seven(string criterion) => string.Join(',', Enumerable.Repeat($$"""{ "weight": 1, "criterion": "{{criterion}}" }""", 7));
        string Group(string criterion) => $$"""{ "weight": 1, "aggregate": "weighted-arithmetic", "of": [{{Seven(criterion)}}] }""";
        var profile = RandomRules.Read($$""" "aggregate": "weighted-geometric", "of": [{{Group("t.0")}}, {{Group("t.1")}}] """);
        var found = ScoreAttribution.Of(RandomRules.Document(16m, 1m), RandomRules.Document(81m, 16m), profile);
        Support.Equal([("n0/n1", 12.5m, 7), ("n0/n9", 19.5m, 7)], found.Deltas.Select(delta => (delta.Node, delta.High, delta.Lines.Length)));
    }

    [Fact]
    public void Caps_by_gates_are_a_line_of_their_own()
    {
        var profile = Bench.Profile("p", 1, 1, more: """, "gates": [{ "id": "low", "when": { "node": "first", "below": 30 }, "cap": 20, "reason": "planted" }]""");
        var found = Of(profile, (20, 80), (40, 80));
        Support.Equal([("root/first", 10m), ("gates", 30m)], found.Deltas.Select(delta => (delta.Node, delta.Low)));
        var gate = Assert.Single(found.Deltas[^1].Lines);
        Assert.Equal(("low", "planted", (Interval?)20m, (Interval?)null), (gate.Path, gate.Title, gate.Old, gate.New));
    }

    [Fact]
    public void The_same_record_twice_has_no_deltas() => Assert.Empty(Of(Bench.Profile("p", 3, 1), (40, null), (40, null)).Deltas);

    [Theory]
    [InlineData("weighted-arithmetic")]
    [InlineData("weighted-geometric")]
    [InlineData("weighted-harmonic")]
    [InlineData("minimum")]
    public void Deltas_add_up_to_the_difference_exactly_end_by_end(string aggregate)
    {
        var value = Gen.OneOf(Gen.Decimal[0, 100].Select(each => (decimal?)decimal.Round(each, 3)), Gen.Const((decimal?)null));
        Gen.Select(Gen.Int[1, 9], Gen.Int[1, 9], value, value, value, value).Sample((a, b, one, two, three, four) =>
        {
            var found = Of(Bench.Profile("p", a, b, aggregate), (one, two), (three, four));
            Assert.Equal(found.New.Low - found.Old.Low, found.Deltas.Sum(delta => delta.Low));
            Assert.Equal(found.New.High - found.Old.High, found.Deltas.Sum(delta => delta.High));
        }, iter: 300);
    }

    // Any depth, aggregate, rounding of groups and way to take what is unknown; parts, gates.
    [Fact]
    public void Deltas_add_up_exactly_under_any_rules() => Gen.Select(RandomRules.Profile, RandomRules.Record, RandomRules.Record).Sample((profile, old, @new) =>
    {
        var found = ScoreAttribution.Of(old, @new, profile);
        Assert.Equal((Scorer.Score(old, profile).Total, Scorer.Score(@new, profile).Total), (found.Old, found.New));
        Assert.Equal(found.New.Low - found.Old.Low, found.Deltas.Sum(delta => delta.Low));
        Assert.Equal(found.New.High - found.Old.High, found.Deltas.Sum(delta => delta.High));
    }, iter: 200);

    // Where every line is left out the total is the whole scale, which no contribution explains: 0 to 100 becomes 40.
    [Fact]
    public void A_total_that_was_made_of_nothing_is_shared_out_too()
    {
        var profile = RandomRules.Read(""" "aggregate": "weighted-arithmetic", "of": [{ "weight": 1, "unknown": "skip", "criterion": "t.0" }] """);
        var found = ScoreAttribution.Of(RandomRules.Document((decimal?)null), RandomRules.Document(40m), profile);
        Assert.Equal((false, 40m, -60m), (found.IsAdditive, found.Deltas.Single().Low, found.Deltas.Single().High));
    }

    [Fact]
    public void What_a_line_did_is_told_with_the_reasons_of_both_scores()
    {
        var line = Assert.Single(Of(Bench.Profile("p", 3, 1), (40, 80), (60, 80)).Deltas).Lines.Single();
        Assert.Equal(("root/first", 40m, 60m), (line.Path, line.Old!.Value.Low, line.New!.Value.Low));
    }

    static ScoreAttribution Of(Profile profile, (decimal?, decimal?) old, (decimal?, decimal?) @new) =>
        ScoreAttribution.Of(Bench.Document("old", old.Item1, old.Item2), Bench.Document("new", @new.Item1, @new.Item2), profile);
}
