using FixScore.Pairing.Posterior;

namespace FixScore.Pairing.Tests;

public sealed class SplitMixTests
{
    // Known answers for seed 1234567, as commonly published for SplitMix64; given here from memory.
    static readonly ulong[] Known = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];

    [Fact]
    public void Numbers_are_those_that_are_published()
    {
        var random = new SplitMix(1234567);
        Assert.Equal(Known, Known.Select(_ => random.Next()));
    }

    // 6457827717110365317 / 2^11, cut, / 2^53, by hand.
    [Fact]
    public void A_number_from_0_to_1_is_the_upper_53_bits() => Assert.Equal(0.3500795420214081, new SplitMix(1234567).Unit(), 15);
}
