using System.Collections.Immutable;
using CsCheck;
using FixScore.Analysis.Normalising;

namespace FixScore.Analysis.Tests.Normalising;

/// <summary>What normalisations do at their edges. Own rules, no source.</summary>
public sealed class NormalisationTests
{
    static readonly Gen<decimal[]> Columns = Gen.Int[1, 500].Select(value => value / 10m).Array[2, 8];

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(0, 0)]
    [InlineData(5, 0.5)]
    [InlineData(10, 1)]
    [InlineData(12, 1)]
    public void Goalposts_clip_what_lies_outside(int value, double expected) => Assert.Equal((decimal)expected, One(Normalisation.Goalposts(0, 10), value));

    [Fact]
    public void Goalposts_the_other_way_round_say_that_less_is_better()
    {
        Assert.Equal(0.75m, One(Normalisation.Goalposts(20, 0), 5));
        Assert.Equal(1m, One(Normalisation.Goalposts(20, 0), -5));
    }

    [Fact]
    public void Equal_goalposts_are_refused() => Assert.Throws<ArgumentException>(() => Normalisation.Goalposts(3, 3.0m));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_reference_that_is_not_above_zero_is_refused(int reference) => Assert.Throws<ArgumentOutOfRangeException>(() => Normalisation.ToReference(reference));

    [Fact]
    public void A_constant_column_puts_every_unit_in_the_middle()
    {
        Assert.Equal([0.5m, 0.5m, 0.5m], Column(Normalisation.OwnExtremes(Direction.MoreIsBetter), 4, 4, 4));
        Assert.Equal([0m, 0m, 0m], Column(Normalisation.ZScore(Direction.LessIsBetter), 4, 4, 4));
        Assert.Equal([1m, 1m, 1m], Column(Normalisation.ToLeader(Direction.LessIsBetter), 4, 4, 4));
        Assert.Equal([1m, 1m, 1m], Column(Normalisation.Ranks(Direction.MoreIsBetter), 4, 4, 4));
    }

    [Fact]
    public void Where_less_is_better_the_least_leads()
    {
        Assert.Equal([1m, 0m, 0.5m], Column(Normalisation.OwnExtremes(Direction.LessIsBetter), 2, 4, 3));
        Assert.Equal([1m, -1m, 0m], Column(Normalisation.ZScore(Direction.LessIsBetter), 2, 4, 3));
        Assert.Equal([1m, 0.5m, 0.8m], Column(Normalisation.ToLeader(Direction.LessIsBetter), 2, 4, 2.5m));
        Assert.Equal([2m, 0.5m, 0.5m], Column(Normalisation.Ranks(Direction.LessIsBetter), 2, 4, 4));
    }

    [Fact]
    public void None_leaves_values_as_they_are() => Assert.Equal([2m, -4m], Column(Normalisation.None, 2, -4));

    [Fact]
    public void An_open_value_opens_the_others_as_far_as_it_can_change_them()
    {
        var table = Support.Open([0m], [new Interval(5, 20)], [10m]);
        Support.Equal<Interval>([0m, new Interval(0.5m, 1), new Interval(0.5m, 1)], Normaliser.Apply(table, Normalisation.OwnExtremes(Direction.MoreIsBetter)).Column(0));
        Support.Equal<Interval>([0m, new Interval(1, 2), new Interval(1, 2)], Normaliser.Apply(table, Normalisation.Ranks(Direction.MoreIsBetter)).Column(0));
        Support.Equal<Interval>([2m, new Interval(0, 1), new Interval(0, 1)], Normaliser.Apply(table, Normalisation.Ranks(Direction.LessIsBetter)).Column(0));
    }

    [Fact]
    public void Problems_name_the_criterion_and_stop_the_work()
    {
        var table = Support.Open([new Interval(1, 2), 0m], [3m, 1m]);
        ImmutableArray<Normalisation> ways = [Normalisation.ZScore(Direction.MoreIsBetter), Normalisation.ToLeader(Direction.MoreIsBetter)];
        Assert.Equal([("table.open-value", "/criteria/0"), ("table.not-positive", "/criteria/1")], Normaliser.ProblemsOf(table, ways).Select(problem => (problem.Code, problem.At.Text)));
        Assert.Contains("'1'", Assert.Throws<ArgumentException>(() => Normaliser.Apply(table, ways)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Normaliser.Apply(table, [Normalisation.None]));
    }

    [Fact]
    public void Every_normalisation_keeps_the_order_of_units() => Columns.Sample(values =>
    {
        foreach (var way in All(Direction.MoreIsBetter)) Assert.Equal(Order(values), Order(Column(way, values)));
        foreach (var way in All(Direction.LessIsBetter)) Assert.Equal(Order([.. values.Select(value => -value)]), Order(Column(way, values)));
    });

    [Fact]
    public void What_can_be_holds_what_is() => Gen.Select(Columns, Gen.Int[0, 30]).Sample((values, width) =>
    {
        var open = Support.Open([.. values.Select((value, unit) => ImmutableArray.Create(unit == 0 ? new Interval(value, value + width) : value))]);
        foreach (var way in All(Direction.MoreIsBetter).Where(way => Normaliser.ProblemsOf(open, [way]).IsEmpty))
            Assert.All(Column(way, values).Zip(Normaliser.Apply(open, way).Column(0)), each => Assert.True(each.Second.Contains(each.First)));
    });

    static IEnumerable<Normalisation> All(Direction direction) =>
        [Normalisation.OwnExtremes(direction), Normalisation.ZScore(direction), Normalisation.ToLeader(direction), Normalisation.Ranks(direction)];

    static int[] Order(decimal[] values) => [.. values.SelectMany(one => values.Select(other => one.CompareTo(other)))];

    static decimal One(Normalisation way, decimal value) => Column(way, value)[0];

    static decimal[] Column(Normalisation way, params decimal[] values) =>
        [.. Normaliser.Apply(Support.Table([.. values.Select(value => ImmutableArray.Create(value))]), way).Column(0).Select(value => value.Low)];
}
