using CsCheck;
using FixScore.Analysis.Weights;

namespace FixScore.Analysis.Tests.Weights;

public sealed class CriticalChangeTests
{
    // Triantaphyllou and Sanchez, Decision Sciences 28 (1997), the first numeric example; data from memory, figures recomputed.
    static readonly CriticalChanges Changes = CriticalChanges.Of(
        Support.Table([0.3088m, 0.2897m, 0.3867m, 0.1922m], [0.2163m, 0.3458m, 0.1755m, 0.6288m], [0.4509m, 0.2473m, 0.1194m, 0.0575m], [0.0240m, 0.1172m, 0.3184m, 0.1215m]),
        [0.3277m, 0.3058m, 0.2876m, 0.0790m]);

    [Theory]
    [InlineData(0, 1, null, -0.7024, 0.1866, -0.0903)]
    [InlineData(0, 2, -0.3794, null, 0.2017, null)]
    [InlineData(0, 3, null, null, null, null)]
    [InlineData(1, 2, -0.0618, 0.1473, 0.2586, 0.0254)]
    [InlineData(1, 3, null, null, -0.9230, null)]
    [InlineData(2, 3, 0.2750, null, -0.5899, -1.8342)]
    public void Each_pair_has_the_changes_that_were_published(int ahead, int behind, double? first, double? second, double? third, double? fourth) =>
        Near([first, second, third, fourth], ahead, behind, change => change.Absolute, 1, 0.00005);

    [Theory]
    [InlineData(0, 1, null, -229.7, 64.9, -114.3)]
    [InlineData(0, 2, -115.8, null, 70.1, null)]
    [InlineData(0, 3, null, null, null, null)]
    [InlineData(1, 2, -18.9, 48.2, 89.9, 32.1)]
    [InlineData(1, 3, null, null, -320.9, null)]
    [InlineData(2, 3, 83.9, null, -205.1, -2321.8)]
    public void Each_change_is_a_share_of_its_weight(int ahead, int behind, double? first, double? second, double? third, double? fourth) =>
        Near([first, second, third, fourth], ahead, behind, change => change.Relative, 100, 0.05);

    [Fact]
    public void The_third_weight_decides_the_top_and_the_first_any_place()
    {
        Assert.Equal((new UnitPair(0, 1), 2), (Changes.ForTop!.Pair, Changes.ForTop.Criterion));
        Assert.Equal((new UnitPair(1, 2), 0), (Changes.ForAny!.Pair, Changes.ForAny.Criterion));
    }

    [Fact]
    public void Level_units_need_no_change() =>
        Assert.Equal(0, CriticalChanges.Of(Support.Table([1, 0], [0, 1]), [1, 1]).ForTop!.Absolute);

    [Fact]
    public void Units_alike_on_a_criterion_never_tie_through_it()
    {
        var change = CriticalChanges.Of(Support.Table([2, 1], [1, 1]), [1, 1]).Changes[1];
        Assert.Equal((null, null, false), (change.Absolute, change.Relative, change.IsFeasible));
    }

    [Fact]
    public void One_unit_alone_has_no_change() => Assert.Null(CriticalChanges.Of(Support.Table([1, 2]), [1, 1]).ForAny);

    [Fact]
    public void Weights_so_changed_make_the_pair_tie() => Samples.Tables.Sample(rows =>
    {
        foreach (var change in CriticalChanges.Of(Support.Table(rows), [1, 2, 5]).Changes.Where(change => change.Absolute is not null))
        {
            Fraction[] weights = [1, 2, 5];
            weights[change.Criterion] -= change.Absolute!.Value;
            Assert.Equal(Sum(rows[change.Pair.Ahead], weights), Sum(rows[change.Pair.Behind], weights));
            Assert.Equal(weights[change.Criterion].Sign >= 0, change.IsFeasible);
        }
    }, iter: 200);

    static Fraction Sum(IEnumerable<decimal> row, Fraction[] weights) =>
        row.Zip(weights, (value, weight) => value * weight).Aggregate((sum, each) => sum + each);

    static void Near(double?[] expected, int ahead, int behind, Func<CriticalChange, Fraction?> measure, double scale, double within)
    {
        var changes = Changes.Changes.Where(change => change.Pair == new UnitPair(ahead, behind)).ToArray();
        Assert.Equal(4, changes.Length);
        foreach (var (change, value) in changes.Zip(expected))
            if (value is null) Assert.False(change.IsFeasible);
            else
            {
                Assert.True(change.IsFeasible);
                Support.Near(value.Value, scale * measure(change)!.Value.ToDouble(), within);
            }
    }
}
