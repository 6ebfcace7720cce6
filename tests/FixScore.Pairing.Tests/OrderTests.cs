using CsCheck;
using FixScore.Records;

namespace FixScore.Pairing.Tests;

public sealed class OrderTests
{
    [Fact]
    public void The_order_of_trials_changes_no_verdict() => Shuffled.Sample(pair =>
    {
        var shuffled = Bench.Infer(pair.Shuffled).Contexts.ToDictionary(context => context.Context);
        foreach (var context in Bench.Infer(pair.Record).Contexts)
        {
            var other = shuffled[context.Context];
            Assert.Equal(context.IsConsistent, other.IsConsistent);
            Assert.Equal(context.Parts.Select(Shown), other.Parts.Select(Shown));
        }
    }, iter: Runs.Of(2_000));

    static Gen<(TeardownRecord Record, TeardownRecord Shuffled)> Shuffled =>
        from seed in Gen.Int[0, int.MaxValue]
        let record = RandomTrials.Of(seed)
        from trials in Gen.Shuffle(record.Swaps.ToArray())
        select (record, record with { Swaps = EntryList.Of<SwapTrial>(trials) });

    static (string, Verdict, OneOf<SwapResult>, SwapResult, Verdict) Shown(PartVerdict verdict) =>
        (verdict.Part.Id, verdict.Verdict, verdict.Worst, verdict.OfPart.AtWorst, verdict.OfGroup.Verdict);
}
