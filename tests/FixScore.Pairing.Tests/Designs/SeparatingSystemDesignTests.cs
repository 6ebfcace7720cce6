using FixScore.Pairing.Designs;
using static FixScore.Pairing.Tests.Designs.Outcomes;

namespace FixScore.Pairing.Tests.Designs;

public sealed class SeparatingSystemDesignTests
{
    // Worst case of bisection, ⌈log₂ n⌉ and with "none" ⌈log₂(n + 1)⌉ (Katona 1966, from memory), recomputed by hand.
    [Theory]
    [InlineData(1, 0, 1)]
    [InlineData(2, 1, 2)]
    [InlineData(3, 2, 2)]
    [InlineData(5, 3, 3)]
    [InlineData(7, 3, 3)]
    [InlineData(8, 3, 4)]
    [InlineData(10, 4, 4)]
    [InlineData(12, 4, 4)]
    [InlineData(16, 4, 5)]
    [InlineData(24, 5, 5)]
    [InlineData(32, 5, 6)]
    public void Trials_for_one_part_among_n_and_for_one_or_none(int parts, int among, int orNone)
    {
        Assert.Equal(among, SeparatingSystems.OneAmong(Parts(parts)).Trials.Length);
        Assert.Equal(orNone, SeparatingSystems.OneOrNone(Parts(parts)).Trials.Length);
    }

    // Code table for seven candidates and "none": part i is in trial t when bit t of i is set.
    [Fact]
    public void Seven_candidates_and_none_are_spelled_in_three_trials()
    {
        var design = SeparatingSystems.OneOrNone(Parts(7));
        Assert.Equal(["p1 p3 p5 p7", "p2 p3 p6 p7", "p4 p5 p6 p7"], design.Trials.Select(trial => trial.Joined()));
        Assert.Equal(["001", "010", "011", "100", "101", "110", "111"], Parts(7).Select(part => Word(design, part)));
    }

    [Fact]
    public void Outcomes_differ_for_every_part_and_none()
    {
        for (var parts = 0; parts <= 70; parts++)
        {
            Assert.Equal(parts, Words(SeparatingSystems.OneAmong(Parts(parts))).Distinct().Count());
            var orNone = SeparatingSystems.OneOrNone(Parts(parts));
            Assert.Equal(parts, Words(orNone).Where(word => word.Contains('1', StringComparison.Ordinal)).Distinct().Count());
        }
    }

    // Completely separating systems: the smallest T with C(T, ⌊T/2⌋) ≥ n (Sperner 1928), recomputed by direct minimisation.
    [Theory]
    [InlineData(2, 2)]
    [InlineData(3, 3)]
    [InlineData(4, 4)]
    [InlineData(6, 4)]
    [InlineData(7, 5)]
    [InlineData(10, 5)]
    [InlineData(11, 6)]
    [InlineData(20, 6)]
    [InlineData(21, 7)]
    [InlineData(35, 7)]
    [InlineData(36, 8)]
    public void Of_two_parts_each_is_swapped_without_the_other(int parts, int trials)
    {
        var design = SeparatingSystems.Completely(Parts(parts));
        Assert.Equal(trials, design.Trials.Length);
        foreach (var one in design.Parts)
            foreach (var other in design.Parts.Remove(one))
                Assert.Contains(design.Trials, trial => trial.Contains(one) && !trial.Contains(other));
    }

    [Fact]
    public void A_single_part_takes_one_trial_and_no_part_takes_none()
    {
        Assert.Equal("p1", Assert.Single(SeparatingSystems.Completely(Parts(1)).Trials).Joined());
        Assert.Empty(SeparatingSystems.Completely([]).Trials);
    }

    [Fact]
    public void A_part_named_twice_is_refused() => Assert.Throws<ArgumentException>(() => SeparatingSystems.OneAmong(["a", "b", "a"]));

    [Fact]
    public void A_design_tells_what_to_install()
    {
        var trials = SeparatingSystems.OneOrNone(Parts(3)).From("donor");
        Assert.Equal(["p1 p3", "p2 p3"], trials.Select(trial => trial.Select(each => each.Part).Joined()));
        Assert.All(trials.SelectMany(trial => trial), each => Assert.Equal("donor", each.Unit));
    }

    static IEnumerable<string> Words(SwapDesign design) => design.Parts.Select(part => Word(design, part));
}
