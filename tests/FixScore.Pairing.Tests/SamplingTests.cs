using System.Collections.Immutable;
using System.Globalization;
using FixScore.Pairing.Posterior;

namespace FixScore.Pairing.Tests;

/// <summary>Sampled probabilities of small sets, whose exact ones are listed.</summary>
public sealed class SamplingTests
{
    static readonly double[] Priors = [0.1, 0.3, 0.05, 0.4];

    static readonly ImmutableArray<Factor> Factors = [new([0, 1], 0.95, 0.1), new([1, 2, 3], 0.2, 0.9), new([0, 3], 0.9, 0.15)];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(9)]
    public void They_lie_near_the_exact_ones_within_what_they_say_of_themselves(ulong seed)
    {
        var exact = Enumeration.Of(Factors, Priors)!;
        var sampled = Sampling.Of(Factors, Priors, seed, 2_000, default);
        Assert.All(sampled.Zip(exact), pair => Assert.InRange(pair.First.Mean - pair.Second, -0.012, 0.012));
        Assert.All(sampled, each => Assert.InRange(each.Error, 0.00005, 0.006));
    }

    // No source: counted once and written down, so that the same seed gives the same digits for ever.
    [Theory]
    [InlineData(1, 20, "0.5389941646 0.4028473285 0.0324620665 0.442414611", "0.0537345494 0.0490741904 0.0029156532 0.0447834732")]
    [InlineData(5, 1, "0.5851965602 0.3820345989 0.0307803468 0.3806451613", "0.1188654115 0.1257965478 0.0072643461 0.1227745253")]
    public void The_same_seed_gives_the_same_digits(ulong seed, int sweeps, string means, string errors)
    {
        var sampled = Sampling.Of(Factors, Priors, seed, sweeps, default);
        Assert.Equal((means, errors), (Shown(sampled.Select(each => each.Mean)), Shown(sampled.Select(each => each.Error))));
    }

    // Without trials every draw has the prior probability, so the mean is exact and the error nothing.
    [Fact]
    public void Without_trials_they_are_the_guesses() =>
        Assert.All(Sampling.Of([], Priors, 3, 10, default).Zip(Priors), pair => Assert.Equal((pair.Second, 0.0), (Math.Round(pair.First.Mean, 12), Math.Round(pair.First.Error, 12))));

    [Fact]
    public void A_run_can_be_cancelled() => Assert.Throws<OperationCanceledException>(() => Sampling.Of(Factors, Priors, 1, 10, new CancellationToken(canceled: true)));

    [Theory]
    [InlineData("0 1|1 2|3", "0 1 2|3")]
    [InlineData("3|2|1|0", "0|1|2|3")]
    [InlineData("0 3|1 2|2 3", "0 1 2 3")]
    [InlineData("4 2|0 4|1 3", "0 2 4|1 3")]
    public void Parts_are_linked_by_the_trials_they_share(string trials, string linked) => Assert.Equal(linked, string.Join('|', Linked.Of(
        [.. trials.Split('|').Select(trial => new Factor([.. trial.Split(' ').Select(int.Parse)], 0.9, 0.1))]).Select(each => string.Join(' ', each.Parts))));

    [Fact]
    public void Trials_of_linked_parts_count_them_from_nought()
    {
        var linked = Linked.Of([new([1, 4], 0.9, 0.1), new([], 0.5, 0.5), new([2], 0.8, 0.2), new([4], 0.7, 0.3)]).ToArray();
        Assert.Equal(["0 1|1", "0"], linked.Select(each => string.Join('|', each.Factors.Select(factor => string.Join(' ', factor.Parts)))));
    }

    [Theory]
    [InlineData("0.0", true)]
    [InlineData("0.4999", true)]
    [InlineData("0.5", false)]
    [InlineData("-0.0001", false)]
    public void Rates_lie_between_nought_and_a_half(string rate, bool isOne)
    {
        var value = decimal.Parse(rate, CultureInfo.InvariantCulture);
        if (isOne) Assert.Equal(value, new ErrorRates(value, value).FalseFlag);
        else Assert.Contains("An error rate is 0 to below 1/2.", Assert.Throws<ArgumentOutOfRangeException>(() => new ErrorRates(0, value)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void At_least_one_sweep_is_asked_for() =>
        Assert.Equal("sweeps", Assert.Throws<ArgumentOutOfRangeException>(() => TiePosteriors.Of(new RecordCase(Bench.Phone()), NoiseModel.None, sweeps: 0)).ParamName);

    static string Shown(IEnumerable<double> numbers) => string.Join(' ', numbers.Select(number => number.ToString("0.##########", CultureInfo.InvariantCulture)));
}
