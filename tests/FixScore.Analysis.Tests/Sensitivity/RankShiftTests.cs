using FixScore.Analysis.Ranking;
using FixScore.Analysis.Sensitivity;

namespace FixScore.Analysis.Tests.Sensitivity;

// By hand, no source: small tables whose shifts can be counted.
public sealed class RankShiftTests
{
    static readonly UnitTable Two = Support.Table([0.9m, 0.1m], [0.4m, 0.4m]);
    static readonly SobolOptions Some = new(4_096);

    [Fact]
    public void Where_only_the_rule_is_open_all_variance_is_the_rules()
    {
        // Means 0.5 and 0.4; geometric 0.3 and 0.4, harmonic 0.18 and 0.4, minimum 0.1 and 0.4: only the first keeps the order.
        var shift = RankShiftSensitivity.Of(Two, [1, 2], new([1m, 1m], RankShiftInputs.UsualRules, []), Some);
        Support.Equal([new("1", InputKind.Weight, 0), new("2", InputKind.Weight, 0), new("rule", InputKind.Rule, 4)], shift.Inputs);
        Support.Near(0.75, shift.Indices.Mean, 0.03);
        Assert.Equal((default, default), (shift.Indices.Inputs[0], shift.Indices.Inputs[1]));
        Support.Near(1, shift.Indices.Inputs[2].First, 0.08);
        Support.Near(1, shift.Indices.Inputs[2].Total, 0.08);
    }

    [Fact]
    public void Where_only_a_weight_is_open_all_variance_is_the_weights()
    {
        // Level at weights 3 to 5: below 0.6 for 1 the order turns.
        var shift = RankShiftSensitivity.Of(Two, [1, 2], new([new Interval(0, 1.2m), 1m], [ScoreRules.Arithmetic], []), Some);
        Support.Near(0.5, shift.Indices.Mean, 0.03);
        Support.Near(1, shift.Indices.Inputs[0].First, 0.08);
        Assert.Equal(default, shift.Indices.Inputs[1]);
    }

    [Fact]
    public void A_choice_made_by_the_caller_counts_as_an_input()
    {
        var swapped = new TableChoice("turned", [table => table, table => table with { Rows = [table.Rows[1], table.Rows[0]] }]);
        var shift = RankShiftSensitivity.Of(Two, [1, 2], new([1m, 1m], [ScoreRules.Arithmetic], [swapped]), Some);
        Support.Near(0.5, shift.Indices.Mean, 0.03);
        Support.Near(1, shift.Indices.Inputs[3].Total, 0.08);
    }

    [Fact]
    public void Nothing_open_moves_nothing()
    {
        var table = Support.Table([3, 3], [2, 2], [2, 2], [1, 1]);
        var shift = RankShiftSensitivity.Of(table, Ranks.Middles([3, 2, 2, 1]), new([1m, 1m], [ScoreRules.Minimum], []), Some);
        Assert.Equal((0.0, 0.0), (shift.Indices.Mean, shift.Indices.Variance));
    }

    [Fact]
    public void Rules_follow_their_formulas()
    {
        double[] values = [1, 4];
        Assert.Equal((3.25, 1.0), (ScoreRules.Arithmetic(values, [1, 3]), ScoreRules.Minimum(values, [1, 3])));
        Support.Near(2, ScoreRules.Geometric(values, [1, 1]), 1e-12);
        Support.Near(1.6, ScoreRules.Harmonic(values, [1, 1]), 1e-12);
        Assert.All(RankShiftInputs.UsualRules, rule => Assert.Equal((0.0, 0.0), (rule([0, 0], [1, 1]), rule(values, [0, 0]))));
    }

    // By hand: A. H. Copeland's points, units beaten less units lost to; the same from exact supports.
    [Fact]
    public void Outranking_counts_the_units_beaten_less_those_lost_to()
    {
        var table = Support.Table([3, 1, 1], [2, 2, 2], [1, 3, 1], [1, 3, 1]);
        var scores = new double[4];
        ScoreRules.Copeland([.. table.Rows.Select(row => row.Select(value => (double)value.Low).ToArray())], [2, 1, 1], scores);
        // The second beats both last ones (3 to 1), the first is level with it (2 to 2) and beats them (2 to 1).
        Assert.Equal([2, 2, -2, -2], scores);
        Assert.Equal(FixScore.Analysis.Aggregating.SupportMatrix.Of(table, [2, 1, 1]).Copeland().Select(points => (double)points), scores);
    }

    [Fact]
    public void An_outranking_counts_among_the_rules()
    {
        // 0.9 and 0.1 against 0.4 and 0.4: level when both weigh the same, so that both share the first place.
        var shift = RankShiftSensitivity.Of(Two, [1, 2], new([1m, 1m], [ScoreRules.Arithmetic], []) { TableRules = [ScoreRules.Copeland] }, Some);
        Assert.Equal(new RankShiftInput("rule", InputKind.Rule, 2), shift.Inputs[2]);
        Support.Near(0.25, shift.Indices.Mean, 0.02);
    }

    [Fact]
    public void What_does_not_fit_is_refused()
    {
        RankShiftInputs fits = new([1m, 1m], [ScoreRules.Arithmetic], []);
        Assert.Throws<ArgumentException>(() => RankShiftSensitivity.Of(Two, [1], fits));
        Assert.Throws<ArgumentException>(() => RankShiftSensitivity.Of(Two, [1, 2], fits with { Weights = [1m] }));
        Assert.Throws<ArgumentException>(() => RankShiftSensitivity.Of(Two, [1, 2], fits with { Rules = [] }));
        Assert.Throws<ArgumentException>(() => RankShiftSensitivity.Of(Two, [1, 2], fits with { Rules = [(_, _) => double.NaN] }));
        Assert.Throws<ArgumentException>(() => RankShiftSensitivity.Of(Two, [1, 2], fits with { Choices = [new("fewer", [table => table with { Rows = [table.Rows[0]] }])] }));
    }
}
