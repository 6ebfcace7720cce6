using System.Collections.Immutable;
using CsCheck;
using FixScore.Records;

namespace FixScore.Pairing.Tests;

public sealed class PosteriorTests
{
    static readonly NoiseModel Noise = new(new ErrorRates(0.05m, 0.02m)) { Functions = NoiseModel.None.Functions.Add("g", new(0.2m, 0.1m)) };

    // Bayes' rule by hand, prior 0.1 each: one clean trial on two parts leaves (0.19 x 0.05) against (0.81 x 0.98).
    [Fact]
    public void One_clean_trial_by_hand()
    {
        var found = Of(Bench.Phone(Bench.Swap("t", "display=b battery=b", Bench.Works())), new(new ErrorRates(0.05m, 0.02m)), Even("0.1"));
        var whole = (0.19 * 0.05) + (0.81 * 0.98);
        Assert.Equal(0.1 * 0.05 / whole, found[0].Probability!.Value, 14);
        Assert.Equal(0.1, found[2].Probability!.Value, 14);
        Assert.All(found, each => Assert.Equal(0, each.StandardError));
    }

    [Fact]
    public void Probabilities_equal_those_of_listing_every_set_of_parts()
    {
        for (var seed = 0; seed < Runs.Of(2_000); seed++)
        {
            var record = RandomTrials.Of(seed, mostParts: 12);
            foreach (var context in TiePosteriors.Of(new RecordCase(record), Noise).Contexts)
            {
                var truth = new ListedPosteriors(record, context.Context, Noise);
                foreach (var part in context.Parts) Assert.Equal(truth.Of(part.Part.Id), part.Probability!.Value, 1e-12);
            }
        }
    }

    [Fact]
    public void Without_errors_paired_is_one_cleared_is_none_and_suspect_is_between()
    {
        for (var seed = 0; seed < Runs.Of(4_000); seed++)
        {
            var source = new RecordCase(RandomTrials.Of(seed));
            var verdicts = source.Derive<PairingVerdicts>();
            foreach (var (context, proven) in TiePosteriors.Of(source, NoiseModel.None).Contexts.Zip(verdicts.Contexts))
                foreach (var part in context.Parts.Where(_ => proven.IsConsistent))
                    Assert.True(Agrees(proven.VerdictOn(part.Part.Id), part), $"{seed} {part.Part.Id}");
        }
    }

    [Fact]
    public void Trials_that_contradict_each_other_leave_no_probability_unless_checks_can_mislead()
    {
        var record = Bench.Phone(Bench.Swap("t", "display=b", Bench.Works()), Bench.Swap("u", "display=b", Bench.Warns()));
        Assert.Null(Of(record, NoiseModel.None)[0].Probability);
        Assert.InRange(Of(record, Noise)[0].Probability!.Value, 0.01, 0.99);
    }

    [Fact]
    public void The_order_of_trials_does_not_matter() => Gen.Int[0, 5_000].Sample(seed =>
    {
        var record = RandomTrials.Of(seed);
        var turned = record with { Swaps = EntryList.Of(record.Swaps.Reverse().ToImmutableArray()) };
        var (one, other) = (TiePosteriors.Of(new RecordCase(record), Noise), TiePosteriors.Of(new RecordCase(turned), Noise));
        foreach (var context in one.Contexts)
            foreach (var (a, b) in context.Parts.Zip(other.Contexts.Single(each => each.Context == context.Context).Parts))
                Assert.Equal(a.Probability!.Value, b.Probability!.Value, 1e-12);
    }, iter: Runs.Of(300));

    [Fact]
    public void A_further_clean_trial_of_a_part_alone_never_makes_it_more_probable() => Gen.Int[0, 5_000].Sample(seed =>
    {
        var record = RandomTrials.Of(seed) with { Joints = default };
        var part = record.Parts.AsArray()[^1];
        if (part.Inert || part.Role == Roles.Mainboard || record.Swaps.Any(trial => trial.Installed.IsEmpty)) return;
        var more = record with { Swaps = EntryList.Of(record.Swaps.Append(Bench.Swap("more", $"{part.Id}=b", Bench.Works("fresh")) with { LockState = LockState.Locked }).ToImmutableArray()) };
        var context = new SwapContext(LockState.Locked, null, null);
        if (record.Swaps.All(trial => SwapContext.Of(trial) != context)) return;
        Assert.True(At(more, context, part.Id) <= At(record, context, part.Id) + 1e-12);
    }, iter: Runs.Of(300));

    [Fact]
    public void Sampled_probabilities_lie_near_the_exact_ones()
    {
        var (parts, trials) = Chain(19);
        var exact = Assert.Single(TiePosteriors.Of(new RecordCase(Bench.Device(parts, [], trials)), Noise).Contexts);
        // Two more parts that one more trial links make it too many to list; far from the others they hardly matter.
        var (more, longer) = Chain(23);
        var sampled = Assert.Single(TiePosteriors.Of(new RecordCase(Bench.Device(more, [], longer)), Noise).Contexts);
        Assert.All(sampled.Parts, part => Assert.InRange(part.StandardError, 1e-9, 0.01));
        for (var i = 0; i < 10; i++) Assert.InRange(sampled.Parts[i].Probability!.Value - exact.Parts[i].Probability!.Value, (-4 * sampled.Parts[i].StandardError) - 1e-4, (4 * sampled.Parts[i].StandardError) + 1e-4);
    }

    [Fact]
    public void The_same_seed_gives_the_same_probabilities_and_another_one_others()
    {
        var (parts, trials) = Chain(24);
        var record = Bench.Device(parts, [], trials);
        double[] With(ulong seed) => [.. TiePosteriors.Of(new RecordCase(record), Noise, seed: seed, sweeps: 200).Contexts[0].Parts.Select(part => part.Probability!.Value)];
        Assert.Equal(With(7), With(7));
        Assert.NotEqual(With(7), With(8));
    }

    [Fact]
    public void More_linked_parts_than_can_be_listed_and_no_errors_is_undefined()
    {
        var (parts, trials) = Chain(24);
        Assert.Null(TiePosteriors.Of(new RecordCase(Bench.Device(parts, [], trials)), NoiseModel.None).Contexts[0].Parts[0].Probability);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(-0.1)]
    public void An_error_rate_is_none_to_below_one_half(decimal rate) => Assert.Throws<ArgumentOutOfRangeException>(() => new ErrorRates(rate, 0));

    static bool Agrees(Verdict verdict, PartPosterior part) => verdict switch
    {
        Verdict.Paired => Math.Abs(part.Probability!.Value - 1) < 1e-12,
        Verdict.Cleared => part.Probability == 0,
        Verdict.Untested => Math.Abs(part.Probability!.Value - (double)part.Before) < 1e-12,
        _ => part.Probability is > 0 and < 1,
    };

    // Every two neighbours are swapped together; every third pair flags.
    static (Part[] Parts, SwapTrial[] Trials) Chain(int length) => (
        [Bench.Board, .. Enumerable.Range(0, length).Select(i => Bench.Part($"p{i}"))],
        [.. Enumerable.Range(0, length - 1).Select(i => Bench.Swap($"t{i}", $"p{i}=b p{i + 1}=b", i % 3 == 1 ? Bench.Warns("f") : Bench.Works("g")))]);

    static double At(TeardownRecord record, SwapContext context, string part) =>
        TiePosteriors.Of(new RecordCase(record), Noise).Contexts.Single(each => each.Context == context).Parts.Single(each => each.Part.Id == part).Probability!.Value;

    static TiePriors Even(string probability) => TiePriors.Read(System.Text.Encoding.UTF8.GetBytes($$"""{"other": {{probability}} }"""));

    static ImmutableArray<PartPosterior> Of(TeardownRecord record, NoiseModel noise, TiePriors? priors = null) =>
        Assert.Single(TiePosteriors.Of(new RecordCase(record), noise, priors).Contexts).Parts;
}
