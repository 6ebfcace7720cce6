using System.Collections.Immutable;
using FixScore.Criteria.Pairing;
using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

/// <summary>The points are the criterion's own judgement; there is no source to compare them with.</summary>
public sealed class SoftwarePairingCriterionTests
{
    static readonly SoftwarePairingCriterion Criterion = new();
    static readonly Scale Scale = new(0, 100);
    static readonly Serialisation Free = Demands(SerialAction.None, SerialAction.None);

    [Theory]
    [InlineData(SwapResult.Works, 100)]
    [InlineData(SwapResult.Notice, 75)]
    [InlineData(SwapResult.Warning, 50)]
    [InlineData(SwapResult.Degraded, 20)]
    [InlineData(SwapResult.Refused, 0)]
    public void The_worst_result_proven_decides(SwapResult result, int points) =>
        Assert.Equal((Interval)points, Judge(Free, Swap("t", "display=b", Check("touch", result))).Score);

    [Fact]
    public void The_reason_of_a_tied_part_names_function_result_and_trials()
    {
        var outcome = Judge(Free,
            Swap("t1", "battery=b", Works()), Swap("t2", "display=b battery=b", Works("gauge"), Check("touch", SwapResult.Degraded)));
        var paired = Assert.Single(outcome.Reasons, reason => reason.Code == "paired");
        Assert.Equal(["/swaps/0", "/swaps/1", "/swaps/1/checks/1"], paired.Pointers.Select(pointer => pointer.Text));
        Assert.Equal(
            "display is tied to the main board: touch is degraded in trial t2, proven by t1, t2 (lock state unknown, software unknown, procedure unknown)",
            paired.Text);
        Assert.Equal((Interval)20, paired.Points);
        Assert.Empty(outcome.Missing);
    }

    [Fact]
    public void The_worst_over_contexts_counts()
    {
        var outcome = Judge(Free,
            Swap("t1", "display=b", Works()) with { Software = "1.0" },
            Swap("t2", "display=b", Check("touch", SwapResult.Notice)) with { Software = "1.1" },
            Swap("t3", "display=b", Warns()) with { Software = "1.2" });
        Assert.Equal((Interval)50, outcome.Score);
    }

    [Fact]
    public void A_context_in_which_the_part_was_not_tried_says_nothing()
    {
        var outcome = Judge(Free, Swap("t1", "display=b", Works()), Swap("t2", "battery=b", Warns()) with { LockState = LockState.Unlocked });
        Assert.Equal((Interval)100, outcome.Score);
        Assert.Equal(["cleared", "serialised"], outcome.Reasons.Select(reason => reason.Code));
    }

    [Fact]
    public void A_procedure_that_restores_the_part_is_a_reason_without_points()
    {
        SwapTrial[] swaps = [Swap("t1", "display=b", Warns()), Swap("t2", "display=b", Works()) with { Procedure = SwapProcedure.Calibration }];
        var outcome = Judge(Free, swaps);
        Assert.Equal((Interval)50, outcome.Score);
        var restored = Assert.Single(outcome.Reasons, reason => reason.Code == "restored");
        Assert.Null(restored.Points);
        Assert.StartsWith("After calibration display works like the original, shown by t2", restored.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_profile_says_which_procedures_count()
    {
        SwapTrial[] swaps = [Swap("t1", "display=b", Warns()), Swap("t2", "display=b", Works()) with { Procedure = SwapProcedure.Calibration }];
        ImmutableArray<string> calibrated = ["calibration"];
        Assert.Equal((Interval)100, Judge(Context(Free, swaps, options => options.With(SoftwarePairingOptions.Procedures, calibrated))).Score);
    }

    [Fact]
    public void A_suspect_scores_from_the_worst_still_possible_to_the_best()
    {
        var outcome = Judge(Free, Swap("t", "display=b battery=b", Warns("touch"), Check("gauge", SwapResult.Refused, "battery")));
        Assert.Equal(new Interval(50, 100), outcome.Score);
        var missing = Assert.Single(outcome.Missing);
        Assert.Equal("/parts/1", missing.At.Text);
        Assert.StartsWith("swaps: a trial with display alone from another unit", missing.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_never_tried_scores_over_all_results_within_what_the_maker_demands()
    {
        var outcome = Judge(Demands(SerialAction.None, SerialAction.Remote));
        Assert.Equal(new Interval(0, 40), outcome.Score);
        Assert.Contains("alone from another unit", Assert.Single(outcome.Missing).What, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_known_at_all_is_unknown_and_says_what_is_missing()
    {
        var outcome = Judge(null, Swap("t", "battery=b", Works()));
        Assert.Equal(OutcomeKind.Unknown, outcome.Kind);
        Assert.Equal(2, outcome.Missing.Length);
    }

    [Fact]
    public void The_worse_of_notification_and_authorisation_counts_and_the_lower_of_trials_and_demands()
    {
        var clean = Swap("t", "display=b", Works());
        Assert.Equal((Interval)40, Judge(Demands(SerialAction.Local, SerialAction.Remote), clean).Score);
        Assert.Equal((Interval)80, Judge(Demands(SerialAction.Local, SerialAction.None), clean).Score);
        Assert.Equal((Interval)0, Judge(Free, Swap("t", "display=b", Check("touch", SwapResult.Refused))).Score);
    }

    [Fact]
    public void A_part_that_trials_clear_wants_a_record_of_demands_unless_a_profile_lets_the_trials_do()
    {
        var clean = Swap("t", "display=b", Works());
        var strict = Judge(null, clean);
        Assert.Equal(new Interval(40, 100), strict.Score);
        Assert.StartsWith("serialised", Assert.Single(strict.Missing).What, StringComparison.Ordinal);
        Assert.Equal((Interval)100, Judge(Context(null, [clean], options => options.With(SoftwarePairingOptions.SerialisedUnknown, WhenSerialisationUnknown.ClearedByTrials))).Score);
    }

    [Fact]
    public void An_unknown_demand_widens_the_score_of_a_tied_part() =>
        Assert.Equal(new Interval(40, 75), Judge(null, Swap("t", "display=b", Check("touch", SwapResult.Notice))).Score);

    [Fact]
    public void Trials_that_contradict_each_other_leave_the_part_unknown()
    {
        var outcome = Judge(Free, Swap("t1", "display=b", Works()), Swap("t2", "display=b", Check("touch", SwapResult.Notice)));
        Assert.Equal(new Interval(0, 100), outcome.Score);
        Assert.Equal("contradictory-trials", outcome.Reasons[0].Code);
        Assert.Contains("t1, t2", Assert.Single(outcome.Missing).What, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_results_are_a_list_the_score_is_a_range() =>
        Assert.Equal(
            new Interval(20, 75),
            Judge(Free, Swap("t", "display=b", Check("touch", new OneOf<SwapResult>(SwapResult.Notice, SwapResult.Degraded)))).Score);

    [Fact]
    public void A_part_is_judged_with_the_group_that_is_replaced_with_it()
    {
        var display = Part("display") with { Serialised = Free };
        var record = Device([Board, display, Part("touch")], [Integral("display", "touch")], [Swap("t", "touch=b", Warns())]);
        Assert.Equal((Interval)50, Judge(On(record, display)).Score);
    }

    [Fact]
    public void An_inert_part_cannot_carry_a_code()
    {
        var frame = Part("frame") with { Inert = true };
        var outcome = Judge(On(Device([Board, frame], [], []), frame));
        Assert.Equal(OutcomeKind.NotApplicable, outcome.Kind);
        Assert.Equal("inert", Assert.Single(outcome.Reasons).Code);
    }

    [Fact]
    public void The_main_board_and_what_is_replaced_with_it_are_not_judged()
    {
        var port = Part("port");
        var record = Device([Board, port], [Integral("board", "port")], []);
        Assert.Equal(OutcomeKind.NotApplicable, Judge(On(record, Board)).Kind);
        Assert.Equal(OutcomeKind.NotApplicable, Judge(On(record, port)).Kind);
    }

    [Fact]
    public void The_plugin_offers_the_criterion_and_the_checks_of_records()
    {
        var catalogue = Catalogue.Of(new PairingPlugin());
        Assert.True(catalogue.TryGetCriterion("software-pairing", out _));
        Assert.Equal(["swap-trials-agree", "swap-trials-functions", "swap-trials-ties"], catalogue.Checks.Select(check => check.Item.Id).Order(StringComparer.Ordinal));
    }

    static Serialisation Demands(SerialAction notify, SerialAction authorise) => new() { Notify = notify, Authorise = authorise };

    static Outcome Judge(Serialisation? serialised, params SwapTrial[] swaps) => Judge(Context(serialised, swaps, options => options));

    static Outcome Judge(PartContext context) => Criterion.Judge(context);

    static PartContext Context(Serialisation? serialised, SwapTrial[] swaps, Func<OptionValues, OptionValues> change)
    {
        var display = Part("display") with { Serialised = serialised };
        return On(Device([Board, display, Part("battery")], [], swaps), display, change);
    }

    static PartContext On(TeardownRecord record, Part part, Func<OptionValues, OptionValues>? change = null)
    {
        var defaults = OptionValues.DefaultsOf(Criterion.Info, Scale);
        return new(new RecordCase(record), Scale, change?.Invoke(defaults) ?? defaults, part, [part.Role]);
    }
}
