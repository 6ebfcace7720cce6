using FixScore.Pairing.Designs;
using static FixScore.Pairing.Tests.Designs.Outcomes;

namespace FixScore.Pairing.Tests.Designs;

public sealed class CoveringArrayTests
{
    // Kleitman & Spencer 1973 and Katona 1973 (from memory): N rows serve up to C(N − 1, ⌊N/2⌋ − 1) columns. For N = 4 to 7
    // recomputed by exact search for the largest clique of columns.
    [Theory]
    [InlineData(2, 4)]
    [InlineData(3, 4)]
    [InlineData(4, 5)]
    [InlineData(5, 6)]
    [InlineData(10, 6)]
    [InlineData(11, 7)]
    [InlineData(15, 7)]
    [InlineData(16, 8)]
    [InlineData(35, 8)]
    [InlineData(36, 9)]
    public void Any_two_parts_are_seen_in_all_four_ways(int parts, int trials)
    {
        var design = CoveringArrays.Pairwise(Parts(parts));
        Assert.Equal(trials, CoveringArrays.PairwiseTrials(parts));
        Assert.Equal(trials, design.Trials.Length);
        foreach (var one in design.Parts)
            foreach (var other in design.Parts.Remove(one))
                Assert.Equal(4, design.Trials.Select(trial => (trial.Contains(one), trial.Contains(other))).Distinct().Count());
    }

    // The arrays CA(4; 2, 3, 2) with rows 000 011 101 110, and CA(5; 2, 4, 2) with rows 0000 0111 1011 1101 1110, up to the
    // order of rows and columns (Kleitman & Spencer 1973, from memory).
    [Theory]
    [InlineData(3, "000 011 101 110")]
    [InlineData(4, "0000 0111 1011 1101 1110")]
    public void The_smallest_arrays_are_the_known_ones(int parts, string rows)
    {
        var design = CoveringArrays.Pairwise(Parts(parts));
        var found = design.Trials.Select(trial => string.Concat(design.Parts.Select(part => trial.Contains(part) ? '1' : '0')));
        Assert.Equal(rows, found.Order(StringComparer.Ordinal).Joined());
    }

    [Fact]
    public void The_first_trial_is_the_control() => Assert.All(Enumerable.Range(1, 40), parts => Assert.Empty(CoveringArrays.Pairwise(Parts(parts)).Trials[0]));

    [Fact]
    public void One_part_is_seen_with_and_without() => Assert.Equal(["", "p1"], CoveringArrays.Pairwise(["p1"]).Trials.Select(trial => trial.Joined()));
}
