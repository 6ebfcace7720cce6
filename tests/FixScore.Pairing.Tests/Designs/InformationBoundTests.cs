using System.Numerics;
using FixScore.Pairing.Designs;

namespace FixScore.Pairing.Tests.Designs;

public sealed class InformationBoundTests
{
    // Information lower bound of group testing (Du & Hwang, Combinatorial Group Testing, from memory), recomputed by exact
    // integer arithmetic.
    [Theory]
    [InlineData(10, 2, 45, 6, 6)]
    [InlineData(16, 2, 120, 7, 8)]
    [InlineData(20, 3, 1140, 11, 11)]
    [InlineData(100, 2, 4950, 13, 13)]
    [InlineData(1000, 3, 166_167_000, 28, 28)]
    public void Bounds_for_several_culprits(int parts, int culprits, int ways, int exactly, int atMost)
    {
        Assert.Equal(new BigInteger(ways), InformationBounds.Choose(parts, culprits));
        Assert.Equal(exactly, InformationBounds.Exactly(parts, culprits));
        Assert.Equal(atMost, InformationBounds.AtMost(parts, culprits));
    }

    // 2^100 subsets of 100 parts take 100 trials, one each: elementary.
    [Fact]
    public void Any_subset_of_a_hundred_takes_a_hundred_trials() => Assert.Equal(100, InformationBounds.AtMost(100, 100));

    // 1 + 5 + 10 = 16 and 1 + 40 + 780 = 821: elementary.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(5, 4)]
    [InlineData(6, 5)]
    [InlineData(40, 10)]
    public void One_tie_among_all(int parts, int trials) => Assert.Equal(trials, InformationBounds.OneTie(parts));

    [Theory]
    [InlineData(3, 4)]
    [InlineData(-1, 0)]
    [InlineData(3, -1)]
    public void Numbers_out_of_range_are_refused(int parts, int culprits)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => InformationBounds.Exactly(parts, culprits));
        Assert.Throws<ArgumentOutOfRangeException>(() => InformationBounds.AtMost(parts, culprits));
    }

    [Fact]
    public void What_is_out_of_range_is_named()
    {
        Assert.Equal("culprits", Assert.Throws<ArgumentOutOfRangeException>(() => InformationBounds.AtMost(3, -1)).ParamName);
        Assert.Equal("parts", Assert.Throws<ArgumentOutOfRangeException>(() => InformationBounds.OneTie(-1)).ParamName);
        Assert.Equal("parts", Assert.Throws<ArgumentOutOfRangeException>(() => TieDesigns.SeparatingBound(-1)).ParamName);
        Assert.Equal("parts", Assert.Throws<ArgumentOutOfRangeException>(() => CoveringArrays.PairwiseTrials(-1)).ParamName);
        Assert.Equal("parts", Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.ExpectedTrials(-1, 0.1m, 3)).ParamName);
        Assert.Equal("groupSize", Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.ExpectedTrials(3, 0.1m, 0)).ParamName);
        Assert.Equal("prevalence", Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.CostPerPart(-0.1m, 1)).ParamName);
        Assert.Equal("prevalence", Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.CostPerPart(1.1m, 1)).ParamName);
        Assert.Equal("prevalence", Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.BestGroupSize(0)).ParamName);
        Assert.Equal("prevalence", Assert.Throws<ArgumentOutOfRangeException>(() => DorfmanPooling.BestGroupSize(1.1m)).ParamName);
        Assert.Equal("design", Assert.Throws<ArgumentNullException>(() => TieDesigns.NotToldApart(null!)).ParamName);
        Assert.Equal("design", Assert.Throws<ArgumentNullException>(() => TieDesigns.BrokenIn(null!, new("a"))).ParamName);
        Assert.Equal("tie", Assert.Throws<ArgumentNullException>(() => TieDesigns.BrokenIn(TieDesigns.Proving(["a"]), null!)).ParamName);
        Assert.Contains("Too many parts.", Assert.Throws<ArgumentException>(() => TieDesigns.Separating(Enumerable.Range(0, 1024).Select(i => $"p{i}"))).Message, StringComparison.Ordinal);
        Assert.Equal("All is known already.", Assert.Throws<InvalidOperationException>(() => BinarySplitting.Of(["a"], 0).After(true)).Message);
    }
}
