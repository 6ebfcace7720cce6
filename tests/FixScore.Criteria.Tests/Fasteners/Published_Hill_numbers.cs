using FixScore.Criteria.Fasteners;

namespace FixScore.Criteria.Tests.Fasteners;

/// <summary>
/// Hill, "Diversity and evenness", Ecology 54 (1973) 427-432: the number of order 2 is the reciprocal of Simpson's index
/// and equals S for S species in equal numbers. The uneven examples are worked by hand from that definition.
/// </summary>
public sealed class Published_Hill_numbers
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(40)]
    public void Equal_numbers_of_S_types_give_exactly_S(int types) =>
        Assert.Equal(types, Effective(Enumerable.Repeat(6, types)));

    // 100^2 / (2500 + 900 + 400) = 10000 / 3800
    [Fact]
    public void Counts_of_50_30_and_20_give_2_6316() =>
        Assert.Equal(2.6315789473684210526315789474m, Effective([50, 30, 20]));

    // 10^2 / (81 + 1) = 100 / 82
    [Fact]
    public void One_odd_screw_among_ten_adds_little() =>
        Assert.Equal(1.2195121951219512195121951220m, Effective([9, 1]));

    // 16^2 / (64 + 16 + 16) = 256 / 96
    [Fact]
    public void Counts_of_8_4_and_4_give_2_and_two_thirds() =>
        Assert.Equal(2.6666666666666666666666666667m, Effective([8, 4, 4]));

    static decimal Effective(IEnumerable<int> counts)
    {
        var facts = FastenerDiversityFacts.Of(Sample.Held(
            [.. counts.Select((count, i) => Sample.Screw($"screw-{i}", count, "cross-h", 1.2m, 2 + i))]));
        Assert.True(facts.Effective.IsExact);
        return facts.Effective.Low;
    }
}
