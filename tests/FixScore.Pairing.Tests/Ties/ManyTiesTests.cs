using FixScore.Pairing.Ties;
using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests.Ties;

/// <summary>Forty parts, 780 pairs and more trials than a bench sees: the answer is there in moments.</summary>
public sealed class ManyTiesTests
{
    static readonly string[] Parts = [.. Enumerable.Range(0, 40).Select(i => $"p{i}")];
    [Fact]
    public void Random_trials_prove_a_tie_to_the_board_and_one_between_parts()
    {
        var context = Ties(120, swapped => swapped.Contains("p3") || swapped.Contains("p7") != swapped.Contains("p9"));
        Assert.Equal(
            ["p3 + main board", "p7 + p9"],
            context.ToBoard.Concat(context.Between).Where(each => each.Verdict == Verdict.Paired).Select(each => each.Tie.ToString()));
        Assert.Equal(818, context.ToBoard.Concat(context.Between).Count(each => each.Verdict == Verdict.Cleared));
    }

    [Fact]
    public void Trials_that_all_fail_leave_all_ties_under_suspicion()
    {
        var context = Ties(200, _ => true);
        Assert.All(context.Between, each => Assert.Equal(Verdict.Suspect, each.Verdict));
    }

    [Fact]
    public void Trials_at_random_contradict_each_other()
    {
        var random = new Random(5);
        Assert.False(Ties(200, _ => random.Next(4) > 0).IsConsistent);
    }

    [Fact]
    public void One_culprit_that_every_other_trial_shows_is_proven_by_few()
    {
        var context = Ties(200, swapped => swapped.Contains("p0"));
        Assert.Equal(Verdict.Paired, context.Of("p0")!.Verdict);
        Assert.InRange(context.Of("p0")!.Because.Length, 2, 12);
    }

    static ContextTies Ties(int trials, Func<string[], bool> flags)
    {
        var random = new Random(11);
        var swaps = Enumerable.Range(0, trials).Select(t =>
        {
            string[] swapped = [.. Parts.Where(_ => random.Next(3) == 0)];
            var check = flags(swapped) ? Warns() : Works();
            return Swap($"t{t}", swapped.Select(part => $"{part}=b").Joined(), check, check with { Function = "other" });
        });
        var source = new RecordCase(Device([Board, .. Parts.Select(Part)], [], swaps));
        return Assert.Single(source.Derive<PairTies>().Contexts);
    }
}
