using CsCheck;
using FixScore.Analysis.Ranking;
using FixScore.Analysis.Weights.Acceptability;

namespace FixScore.Analysis.Tests.Weights;

public sealed class SimulatedAcceptabilityTests
{
    static readonly AcceptabilityOptions Some = new(20_000) { WithWins = true };

    [Theory]
    [MemberData(nameof(AcceptabilityCase.Names), MemberType = typeof(AcceptabilityCase))]
    public void Shares_wins_and_central_weights_are_near_the_exact_ones(string name)
    {
        var expected = AcceptabilityCase.Named(name);
        var actual = SimulatedAcceptability.Of(expected.Table, WeightLaw.Uniform, Some);
        foreach (var (unit, shares) in expected.Shares.Index())
        {
            for (var place = 0; place < shares.Length; place++) NearShare(shares[place].ToDouble(), actual.Share(unit, place + 1), Some.Draws);
            for (var other = 0; other < shares.Length; other++) NearShare(expected.Wins[unit][other].ToDouble(), actual.Wins(unit, other)!.Value, Some.Draws);
            // The standard deviation of a weight is at most 1/2.
            foreach (var (central, mean) in expected.Central[unit].Zip(actual.Central(unit)!.Value)) Support.Near(central.ToDouble(), mean, 4 * 0.5 / Math.Sqrt(actual.Firsts(unit)));
            Assert.Equal(1.0, actual.Confidence(unit));
        }
    }

    [Fact]
    public void A_standard_error_is_the_root_of_p_times_one_less_p_over_draws() =>
        Support.Near(0.0030619, SimulatedAcceptability.Of(AcceptabilityCase.Specialists.Table, WeightLaw.Uniform, Some).StandardError(3, 1), 1e-4);

    [Theory]
    [InlineData(3)]
    [InlineData(30)]
    [InlineData(120)]
    [InlineData(150)]
    public void The_same_seed_gives_the_same_bits_on_one_thread_and_on_several_and_another_seed_others(int units)
    {
        var table = Big(units);
        var one = Bits(SimulatedAcceptability.Of(table, WeightLaw.Uniform, new(1_000, 7) { Threads = 1 }));
        Assert.Equal(one, Bits(SimulatedAcceptability.Of(table, WeightLaw.Uniform, new(1_000, 7) { Threads = 2 })));
        Assert.Equal(one, Bits(SimulatedAcceptability.Of(table, WeightLaw.Uniform, new(1_000, 7) { Threads = 5 })));
        Assert.NotEqual(one, Bits(SimulatedAcceptability.Of(table, WeightLaw.Uniform, new(1_000, 8) { Threads = 1 })));
    }

    // Counted once and kept: any machine must give the same. No source.
    [Fact]
    public void A_seed_gives_these_counts_everywhere()
    {
        var few = SimulatedAcceptability.Of(AcceptabilityCase.General.Table, WeightLaw.Uniform, new(1_000, 42));
        Assert.Equal([294, 270, 436], Enumerable.Range(0, 3).Select(few.Firsts));
        var around = SimulatedAcceptability.Of(AcceptabilityCase.General.Table, WeightLaw.Around([5, 3, 2], 2.5m), new(1_000, 42));
        Assert.Equal([519, 276, 205], Enumerable.Range(0, 3).Select(around.Firsts));
        foreach (var (units, digest) in new[] { (5, "5310ccc4df4afc97"), (50, "30059ac86d367309"), (150, "60737b93f5ef9d08") })
            Assert.Equal(digest, Digest(SimulatedAcceptability.Of(Big(units), WeightLaw.Uniform, new(500, 3))));
    }

    [Theory]
    [InlineData(7)]
    [InlineData(60)]
    [InlineData(100)]
    public void Many_units_are_ranked_as_one_by_one_comparisons_rank_them(int units)
    {
        var actual = SimulatedAcceptability.Of(Big(units), WeightLaw.Uniform, new(100) { WithWins = true });
        for (var unit = 0; unit < units; unit++)
        {
            var above = Enumerable.Range(0, units).Where(other => other != unit).Sum(other => actual.Wins(other, unit)!.Value);
            Support.Near(above + 1, Enumerable.Range(1, units).Sum(place => place * actual.Share(unit, place)), 1e-9);
        }
    }

    [Theory]
    [InlineData(3)]
    [InlineData(26)]
    [InlineData(90)]
    public void Where_all_are_level_all_share_all_places(int units)
    {
        var level = SimulatedAcceptability.Of(Rows(units, (_, _) => 0.3m), WeightLaw.Uniform, new(50) { WithWins = true });
        foreach (var unit in Enumerable.Range(0, units))
        {
            Assert.All(Enumerable.Range(1, units), place => Support.Near(1.0 / units, level.Share(unit, place), 1e-8));
            Assert.Equal((50, 0.5), (level.Firsts(unit), level.Wins(unit, 0)));
        }
    }

    [Fact]
    public void Values_too_near_for_the_quick_comparison_are_still_told_apart()
    {
        var near = SimulatedAcceptability.Of(Support.Table([1_000_000.0000001m, 0], [1_000_000, 0], [0, 0]), WeightLaw.Uniform, new(1_000));
        Assert.Equal((1_000, 0, 0), (near.Firsts(0), near.Firsts(1), near.Firsts(2)));
    }

    // Barron and Barrett (1996) for ordered weights; the mean of a Dirichlet law is its centre.
    [Fact]
    public void The_laws_have_the_means_they_should()
    {
        var table = Support.Table([1, 1, 1]);
        Assert.All(SimulatedAcceptability.Of(table, WeightLaw.Ordered, Some).Central(0)!.Value.Zip([11 / 18.0, 5 / 18.0, 1 / 9.0]), pair => Support.Near(pair.Second, pair.First, 0.005));
        foreach (var concentration in (decimal[])[0.5m, 3, 400])
            Assert.All(SimulatedAcceptability.Of(table, WeightLaw.Around([5, 3, 2], concentration), Some).Central(0)!.Value.Zip([0.5, 0.3, 0.2]), pair => Support.Near(pair.Second, pair.First, 0.012));
    }

    // Around equal weights with as many as there are criteria, a Dirichlet law is the uniform one.
    [Fact]
    public void Dirichlet_with_parameters_of_one_is_uniform()
    {
        var actual = SimulatedAcceptability.Of(AcceptabilityCase.General.Table, WeightLaw.Around([1, 1, 1], 3), Some);
        NearShare(9 / 32.0, actual.Share(0, 1), Some.Draws);
        NearShare(71 / 160.0, actual.Share(2, 1), Some.Draws);
    }

    // By hand: uniform on [0, 2] against 1/2 is above with 3/4, and so is first, under any weight of its sole criterion.
    [Fact]
    public void An_open_value_is_drawn_between_its_ends()
    {
        var open = SimulatedAcceptability.Of(Support.Open([new Interval(0, 2)], [0.5m]), WeightLaw.Uniform, Some);
        NearShare(0.75, open.Share(0, 1), Some.Draws);
        NearShare(0.75, open.Confidence(0)!.Value, Some.Draws);
        NearShare(0.25, open.Confidence(1)!.Value, Some.Draws);
    }

    [Fact]
    public void One_unit_is_always_first() => Assert.Equal((1.0, 0.0), First(SimulatedAcceptability.Of(Support.Table([0, 0]), WeightLaw.Uniform, new(1))));

    [Fact]
    public void What_cannot_be_drawn_is_refused()
    {
        var table = Support.Table([1, 2]);
        Assert.Throws<ArgumentOutOfRangeException>(() => SimulatedAcceptability.Of(table, WeightLaw.Uniform, new(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SimulatedAcceptability.Of(table, WeightLaw.Uniform, new(1) { Threads = 0 }));
        Assert.Throws<ArgumentException>(() => SimulatedAcceptability.Of(table, WeightLaw.Around([1, 1, 1], 1)));
        Assert.Throws<ArgumentException>(() => SimulatedAcceptability.Of(new UnitTable([], ["1"], []), WeightLaw.Uniform));
        Assert.Throws<ArgumentException>(() => WeightLaw.Around([1, 0], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeightLaw.Around([1, 1], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => SimulatedAcceptability.Of(table, WeightLaw.Uniform, new(1)).Share(0, 2));
    }

    [Fact]
    public void Shares_add_up_and_do_not_ask_who_stands_first_and_what_is_dominated_is_never_first() => Samples.Tables.Sample(rows =>
    {
        var table = Support.Table(rows);
        var shares = SimulatedAcceptability.Of(table, WeightLaw.Uniform, new(100));
        var turned = SimulatedAcceptability.Of(Support.Table([.. rows.Reverse()]), WeightLaw.Uniform, new(100));
        foreach (var unit in Enumerable.Range(0, rows.Length))
        {
            Support.Near(1, Enumerable.Range(1, rows.Length).Sum(place => shares.Share(unit, place)));
            Support.Near(1, Enumerable.Range(0, rows.Length).Sum(other => shares.Share(other, unit + 1)));
            Assert.All(Enumerable.Range(1, rows.Length), place => Support.Near(shares.Share(unit, place), turned.Share(rows.Length - 1 - unit, place)));
        }
        foreach (var pair in Dominance.Of(table).Pairs) Assert.Equal(0, shares.Share(pair.Under, 1));
    }, iter: 100);

    static (double, double) First(SimulatedAcceptability of) => (of.Share(0, 1), of.StandardError(0, 1));

    static void NearShare(double expected, double actual, int draws) =>
        Support.Near(expected, actual, (4 * Math.Sqrt(expected * (1 - expected) / draws)) + 1e-12);

    static UnitTable Big(int units) => Rows(units, (unit, criterion) => ((unit * 7919) + (criterion * 104729) + (unit * unit * (criterion + 1))) % 10007);

    static UnitTable Rows(int units, Func<int, int, decimal> value) => UnitTables.Of(
        [.. Enumerable.Range(0, units).Select(unit => $"u{unit}")], ["1", "2", "3", "4"],
        Enumerable.Range(0, units).Select(unit => System.Collections.Immutable.ImmutableArray.CreateRange(Enumerable.Range(0, 4).Select(criterion => value(unit, criterion)))));

    static string Digest(SimulatedAcceptability of) => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Runtime.InteropServices.MemoryMarshal.AsBytes(Bits(of).AsSpan())))[..16];

    static double[] Bits(SimulatedAcceptability of)
    {
        var units = Enumerable.Range(0, of.Table.Units.Length).ToArray();
        return [.. units.SelectMany(unit => units.Select(place => of.Share(unit, place + 1))), .. units.SelectMany(unit => of.Central(unit)?.ToArray() ?? [])];
    }
}
