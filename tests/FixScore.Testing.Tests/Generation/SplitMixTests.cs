namespace FixScore.Testing.Tests;

public sealed class SplitMixTests
{
    // Known answers for seed 1234567, as commonly published for SplitMix64; given here from memory.
    [Fact]
    public void The_first_numbers_of_a_seed_are_those_published() => Assert.Equal(
        [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821],
        Numbers(new SplitMix(1234567)));

    static ulong[] Numbers(SplitMix source) => [source.Next(), source.Next(), source.Next(), source.Next(), source.Next()];
}
