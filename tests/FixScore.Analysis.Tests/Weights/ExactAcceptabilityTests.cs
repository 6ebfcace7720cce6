using System.Collections.Immutable;
using CsCheck;
using FixScore.Analysis.Ranking;
using FixScore.Analysis.Weights;
using FixScore.Analysis.Weights.Acceptability;

namespace FixScore.Analysis.Tests.Weights;

public sealed class ExactAcceptabilityTests
{
    [Theory]
    [MemberData(nameof(AcceptabilityCase.Names), MemberType = typeof(AcceptabilityCase))]
    public void Shares_central_weights_and_wins_are_the_fractions_found_by_hand(string name)
    {
        var expected = AcceptabilityCase.Named(name);
        var actual = ExactAcceptability.Of(expected.Table, WeightLaw.Uniform);
        Equal(expected.Shares, actual.Shares);
        Equal(expected.Central, actual.Central.Select(central => central!.Value));
        Equal(expected.Wins, actual.Wins);
    }

    // Areas of the triangle's corners that the all-rounder leaves: first with 1 - 3(1-c)^2 + 3(1-2c)^2 [c < 1/2], last with (1-3c)^2.
    [Theory]
    [InlineData(0.6, 13, 25, 0, 1)]
    [InlineData(0.5, 1, 4, 0, 1)]
    [InlineData(0.2, 0, 1, 4, 25)]
    [InlineData(0.4, 1, 25, 0, 1)]
    public void An_all_rounder_of_a_level_is_first_and_last_as_areas_say(double level, int first, int all, int last, int whole)
    {
        var c = (decimal)level;
        var shares = ExactAcceptability.Of(Support.Table([1, 0, 0], [0, 1, 0], [0, 0, 1], [c, c, c]), WeightLaw.Uniform).Shares[3];
        Assert.Equal((new Fraction(first, all), new Fraction(last, whole)), (shares[0], shares[3]));
    }

    // Barron and Barrett (1996): the centre of ordered weights.
    [Fact]
    public void A_sole_unit_is_first_under_all_weights_and_its_central_ones_are_their_centre()
    {
        Support.Equal([new Fraction(11, 18), new(5, 18), new(1, 9)], ExactAcceptability.Of(Support.Table([1, 2, 3]), WeightLaw.Ordered).Central[0]!.Value);
        Support.Equal([new Fraction(3, 4), new(1, 4)], ExactAcceptability.Of(Support.Table([1, 2]), WeightLaw.Ordered).Central[0]!.Value);
        var sole = ExactAcceptability.Of(Support.Table([1]), WeightLaw.Uniform);
        Assert.Equal((Fraction.One, Fraction.One), (sole.Shares[0][0], sole.Central[0]!.Value[0]));
    }

    [Fact]
    public void Units_alike_share_their_places_equally()
    {
        var alike = ExactAcceptability.Of(Support.Table([1, 0], [1, 0], [0, 1]), WeightLaw.Uniform);
        Equal([[new(1, 4), new(1, 2), new(1, 4)], [new(1, 4), new(1, 2), new(1, 4)], [new(1, 2), 0, new(1, 2)]], alike.Shares);
        Assert.Equal(new Fraction(1, 2), alike.Wins[0][1]);
        Support.Equal([new Fraction(3, 4), new(1, 4)], alike.Central[1]!.Value);
    }

    [Fact]
    public void One_criterion_ranks_by_its_values() =>
        Equal([[0, 0, 1], [new(1, 2), new(1, 2), 0], [new(1, 2), new(1, 2), 0]], ExactAcceptability.Of(Support.Table([2], [3], [3]), WeightLaw.Uniform).Shares);

    [Fact]
    public void What_cannot_be_measured_exactly_is_refused()
    {
        Assert.Throws<ArgumentException>(() => ExactAcceptability.Of(Support.Table([1, 2, 3, 4]), WeightLaw.Uniform));
        Assert.Throws<ArgumentException>(() => ExactAcceptability.Of(Support.Table([1, 2]), WeightLaw.Around([1, 1], 4)));
        Assert.Throws<ArgumentException>(() => ExactAcceptability.Of(Support.Open([new Interval(1, 2), 1m]), WeightLaw.Uniform));
        Assert.Throws<ArgumentException>(() => ExactAcceptability.Of(new UnitTable([], ["1"], []), WeightLaw.Uniform));
    }

    [Fact]
    public void Shares_add_up_and_do_not_ask_who_stands_first_and_what_is_dominated_is_never_first() => Samples.Tables.Sample(rows =>
    {
        var table = Support.Table(rows);
        var (one, other) = (ExactAcceptability.Of(table, WeightLaw.Uniform), ExactAcceptability.Of(Support.Table([.. rows.Reverse()]), WeightLaw.Uniform));
        foreach (var unit in Enumerable.Range(0, rows.Length))
        {
            Assert.Equal(Fraction.One, Sum(one.Shares[unit]));
            Assert.Equal(Fraction.One, Sum(one.Shares.Select(shares => shares[unit])));
            Support.Equal(one.Shares[unit], other.Shares[rows.Length - 1 - unit]);
        }
        foreach (var pair in Dominance.Of(table).Pairs) Assert.Equal((0, 1), (one.Shares[pair.Under][0], one.Wins[pair.Over][pair.Under]));
    }, iter: 100);

    static Fraction Sum(IEnumerable<Fraction> values) => values.Aggregate((sum, value) => sum + value);

    static void Equal(IEnumerable<Fraction[]> expected, IEnumerable<ImmutableArray<Fraction>> actual) =>
        Assert.Equal(expected.Select(row => string.Join(' ', row)), actual.Select(row => string.Join(' ', row)));
}
