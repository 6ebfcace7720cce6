using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Tests.Chance;

public sealed class ChanceTests
{
    // First outputs of SplitMix64 from state 1234567, as widely used to check implementations (from memory).
    [Fact]
    public void Bits_are_those_of_the_reference_generator()
    {
        var counter = new RandomCounter(1234567);
        Assert.Equal(
            [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821],
            Enumerable.Range(0, 5).Select(i => counter.Bits(i)));
    }

    [Fact]
    public void Streams_and_parts_differ()
    {
        var counter = RandomCounter.Of(1, 0);
        Assert.Equal(4, new[] { counter.Bits(0), RandomCounter.Of(1, 1).Bits(0), RandomCounter.Of(2, 0).Bits(0), counter.Part(0).Bits(0) }.Distinct().Count());
        Assert.Equal(counter.Bits(5), RandomCounter.Of(1, 0).Bits(5));
    }

    // Against the platform's own, whose last bits may differ.
    [Theory]
    [InlineData(1e-300)]
    [InlineData(1e-5)]
    [InlineData(0.7)]
    [InlineData(0.70710678118654757)]
    [InlineData(1)]
    [InlineData(1.5)]
    [InlineData(2)]
    [InlineData(12345.678)]
    [InlineData(1e300)]
    public void Logarithm_and_exponential_are_those_of_the_textbook(double value)
    {
        var log = Elementary.Log(value);
        Support.Near(Math.Log(value), log, 4e-16 * Math.Max(1, Math.Abs(log)));
        Support.Near(1, Elementary.Exp(log) / value, 3e-13);
        Support.Near(1, Elementary.Exp(1 / (1 + value)) / Math.Exp(1 / (1 + value)), 1e-15);
    }

    [Fact]
    public void A_power_too_small_for_a_number_gives_zero() => Assert.Equal(0, Elementary.Exp(-800));

    // Mean and variance of a gamma variate of scale 1 are both its shape.
    [Theory]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(7.5)]
    public void Gamma_variates_have_their_mean_and_variance(double shape)
    {
        var stream = new RandomStream(RandomCounter.Of(3, 0));
        var values = new double[40_000];
        for (var i = 0; i < values.Length; i++) values[i] = GammaDraw.Of(shape, ref stream);
        var mean = values.Average();
        Support.Near(shape, mean, 4 * Math.Sqrt(shape / values.Length));
        Support.Near(1, values.Average(value => (value - mean) * (value - mean)) / shape, 0.08);
    }

    [Fact]
    public void Work_that_fails_says_why_on_any_number_of_threads()
    {
        Assert.Throws<FormatException>(() => Shares.Run(9, 1, () => 0, (_, _) => throw new FormatException()));
        Assert.Throws<FormatException>(() => Shares.Run(9, 3, () => 0, (_, _) => throw new FormatException()));
    }
}
