using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

public sealed class ContradictionTests
{
    static IEnumerable<string> Named(ContextVerdicts context) => context.Contradictions.Select(set => set.Joined());

    [Fact]
    public void A_flag_whose_parts_are_all_cleared_contradicts_the_trials_that_clear_them()
    {
        var context = Infer(
            Swap("t1", "display=b battery=b", Warns()), Swap("t2", "display=b", Works()), Swap("t3", "camera=b", Works()), Swap("t4", "battery=b", Works()));
        Assert.False(context.IsConsistent);
        Assert.Equal(["t1 t2 t4"], Named(context));
        Assert.True(context.AllContradictionsListed);
    }

    [Fact]
    public void All_smallest_sets_are_named_in_the_order_of_the_record()
    {
        var context = Infer(
            Swap("t1", "display=b", Works()), Swap("t2", "display=b", Warns()), Swap("t3", "display=c", Works()), Swap("t4", "battery=b", Warns()),
            Swap("t5", "battery=b camera=b", Works()));
        Assert.Equal(["t1 t2", "t2 t3", "t4 t5"], Named(context));
    }

    [Fact]
    public void A_larger_set_is_not_named_beside_a_smaller_one()
    {
        var context = Infer(
            Swap("t1", "display=b battery=b", Warns()), Swap("t2", "display=b", Works()), Swap("t3", "battery=b", Works()), Swap("t4", "battery=b", Warns()));
        Assert.Equal(["t3 t4"], Named(context));
    }

    [Fact]
    public void A_flag_that_implicates_no_foreign_part_cannot_be_right_by_itself() =>
        Assert.Equal(["t"], Named(Infer(Swap("t", "display=b", Warns("gauge", "battery")))));

    [Fact]
    public void A_control_is_named_when_a_trial_clears_only_because_of_it()
    {
        var context = Infer(
            Swap("t1", "battery=b", Warns("gauge")),
            Swap("t2", "display=b battery=b", Works("gauge"), Warns("touch", "display")),
            Swap("c1", "", Warns("touch")),
            Swap("c2", "", Warns("touch")));
        Assert.Equal(["t1 t2 c1", "t1 t2 c2"], Named(context));
    }

    [Fact]
    public void Verdicts_of_a_contradictory_context_prove_nothing()
    {
        var context = Infer(Swap("t1", "display=b", Works()), Swap("t2", "display=b", Warns()), Swap("t3", "battery=b", Works()));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("display"));
        Assert.Equal(Verdict.Suspect, context.VerdictOn("battery"));
        Assert.Equal(Verdict.Untested, context.VerdictOn("camera"));
    }

    [Fact]
    public void The_check_warns_of_each_smallest_set_and_points_at_its_trials()
    {
        var source = new RecordCase(Phone(Swap("t1", "display=b", Works()), Swap("t2", "camera=b", Works()), Swap("t3", "display=b", Warns())));
        var problem = Assert.Single(new PairingCheck().Check(source));
        Assert.Equal("swaps.contradiction", problem.Code);
        Assert.Equal(Severity.Warning, problem.Severity);
        Assert.Equal("/swaps/0", problem.At.Text);
        Assert.Equal(["/swaps/0", "/swaps/2"], problem.Why.Pointers.Select(pointer => pointer.Text));
        Assert.Contains("t1, t3", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_check_is_silent_about_trials_that_agree() =>
        Assert.Empty(new PairingCheck().Check(new RecordCase(Phone(Swap("t1", "display=b", Works()), Swap("t2", "battery=b", Warns())))));

    [Fact]
    public void Of_more_than_a_hundred_smallest_sets_a_hundred_are_listed()
    {
        string[] parts = [.. Enumerable.Range(0, 7).Select(i => $"p{i}")];
        var clean = parts.SelectMany(part => new[] { Swap($"{part}-b", $"{part}=b", Works()), Swap($"{part}-c", $"{part}=c", Works()) });
        var context = Assert.Single(Infer(Device([Board, .. parts.Select(Part)], [], [.. clean, FlaggedWith(parts)])).Contexts);
        Assert.Equal(100, context.Contradictions.Length);
        Assert.All(context.Contradictions, set => Assert.Equal(8, set.Length));
        Assert.False(context.AllContradictionsListed);
    }

    // The smallest cover of 60 parts by 60 trials of three parts each is beyond the limit.
    [Fact]
    public void Beyond_the_limit_of_work_one_set_is_named_of_which_no_trial_can_be_left_out()
    {
        var random = new Random(7);
        string[] parts = [.. Enumerable.Range(0, 60).Select(i => $"p{i}")];
        var clean = parts.Select(part => Swap($"t-{part}", random.GetItems(parts, 2).Append(part).Distinct().Select(each => $"{each}=b").Joined(), Works()));
        var record = Device([Board, .. parts.Select(Part)], [], [.. clean, FlaggedWith(parts)]);
        var context = Assert.Single(Infer(record).Contexts);
        Assert.False(context.AllContradictionsListed);
        var named = Assert.Single(context.Contradictions);
        Assert.False(IsConsistent(named));
        Assert.All(named, left => Assert.True(IsConsistent(named.Remove(left))));

        bool IsConsistent(IEnumerable<string> trials) =>
            Infer(record with { Swaps = [.. record.Swaps.Where(trial => trials.Contains(trial.Id))] }).IsConsistent;
    }

    static SwapTrial FlaggedWith(IEnumerable<string> parts) => Swap("flagged", parts.Select(part => $"{part}=b").Joined(), Warns());
}
