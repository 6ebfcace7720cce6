using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Tests;

public sealed class SettlingTests
{
    [Fact]
    public void A_suspect_is_settled_by_swapping_it_alone_and_the_flagged_functions_come_first()
    {
        var trial = Assert.Single(Of(Two(Bench.Swap("t", "display=b battery=b", Bench.Warns("touch"), Bench.Works("sound")))), each => each.Parts[0] == "display");
        Assert.Equal(("a", "b", Verdict.Suspect, true), (trial.Host, trial.Donor, trial.Now, trial.NeedsControl));
        Assert.Equal<string>(["display"], trial.Parts);
        Assert.Equal<string>(["touch"], trial.Flagged);
    }

    [Fact]
    public void A_control_is_asked_for_only_until_there_is_one() => Assert.All(
        Of(Two(Bench.Swap("c", "", Bench.Works()), Bench.Swap("t", "display=b battery=b", Bench.Warns()))), trial => Assert.False(trial.NeedsControl));

    [Fact]
    public void What_was_never_tried_gets_a_trial_and_what_is_settled_gets_none() => Assert.Equal(
        ["battery", "camera"], Of(Two(Bench.Swap("t", "display=b", Bench.Works()))).SelectMany(trial => trial.Parts));

    [Fact]
    public void A_group_is_settled_as_one()
    {
        var record = Bench.Device([Bench.Board, Bench.Part("glass"), Bench.Part("panel")], [Bench.Integral("glass", "panel")], [Bench.Swap("t", "glass=b", Bench.Untested("touch"), Bench.Works("sound"))]);
        Assert.Equal<string>(["glass", "panel"], Assert.Single(Of(Two(record))).Parts);
    }

    [Fact]
    public void Without_a_second_device_there_is_none() => Assert.Empty(Of(One(Bench.Phone(Bench.Swap("t", "display=b", Bench.Untested("x"), Bench.Works("y"))))));

    [Fact]
    public void Whatever_comes_of_it_the_trial_settles_its_part()
    {
        var settled = 0;
        for (var seed = 0; seed < Runs.Of(1_500); seed++)
        {
            var record = RandomTrials.Of(seed);
            foreach (var trial in Of(record))
            {
                settled++;
                Assert.Equal(Verdict.Cleared, After(record, trial, Bench.Works("fresh")));
                Assert.Equal(Verdict.Paired, After(record, trial, Bench.Warns("fresh")));
            }
        }
        Assert.True(settled > Runs.Of(1_000));
    }

    static Verdict After(TeardownRecord record, SettlingTrial trial, FunctionCheck check)
    {
        var made = new SwapTrial
        {
            Id = "made", Host = trial.Host, LockState = trial.Context.LockState, Software = trial.Context.Software, Procedure = trial.Context.Procedure,
            Installed = [.. trial.Parts.Select(part => new InstalledPart(part, trial.Donor))], Checks = [check],
        };
        var after = Bench.Infer(record with { Swaps = EntryList.Of(record.Swaps.Append(made).ToImmutableArray()) });
        var context = after.Contexts.Single(each => each.Context == trial.Context);
        return context.IsConsistent ? context.Of(trial.Parts[0])!.OfGroup.Verdict : throw new InvalidOperationException("The trial contradicts those before.");
    }

    static ImmutableArray<SettlingTrial> Of(TeardownRecord record) => new RecordCase(record).Derive<SettlingTrials>().Trials;

    static TeardownRecord Two(params SwapTrial[] swaps) => Two(Bench.Phone(swaps));

    static TeardownRecord Two(TeardownRecord record) => With(record, 2);

    static TeardownRecord One(TeardownRecord record) => With(record, 1);

    static TeardownRecord With(TeardownRecord record, int units) => record with { Assessment = record.Assessment with { Units = EntryList.Of(record.Assessment.Units.Take(units).ToImmutableArray()) } };
}
