using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

/// <summary>The rules of comparison are our own; there is no source to compare them with.</summary>
public sealed class ContextComparisonTests
{
    static readonly SwapTrial Locked = Swap("locked", "display=b", Works("touch"), Works("colour")) with
    {
        LockState = LockState.Locked, Software = "1.2", Procedure = SwapProcedure.None,
    };

    static readonly SwapTrial Unlocked = Locked with { Id = "unlocked", LockState = LockState.Unlocked };

    [Fact]
    public void What_is_flagged_in_one_lock_state_only_is_told()
    {
        var compared = Compared(Locked, Unlocked with { Checks = [Works("touch"), Check("colour", SwapResult.Degraded)] });
        Assert.Equal(["lock-states-alike", "flagged-in-one-lock-state"], compared.Select(each => each.Finding.Code));
        Assert.Equal("display from a sister unit, touch: works both when locked and when unlocked.", compared[0].Finding.Text);
        Assert.Equal("display from a sister unit, colour: degraded only when unlocked, works when locked.", compared[1].Finding.Text);
        Assert.Equal((ComparedBy.LockState, Fares.Worse), (compared[1].By, compared[1].Fares));
        Assert.Equal("locked unlocked", compared[1].Finding.Trials.Joined());
        Assert.Equal(["/swaps/0", "/swaps/1"], compared[1].Finding.Why.Pointers.Select(pointer => pointer.Text));
    }

    [Fact]
    public void What_is_flagged_when_locked_only_is_told_as_well() => Assert.Equal(
        "display from a sister unit, touch: refused only when locked, works when unlocked.",
        Assert.Single(Compared(Locked with { Checks = [Check("touch", SwapResult.Refused)] }, Unlocked)).Finding.Text);

    [Fact]
    public void Three_lock_states_are_held_against_the_one_nearest_to_delivery()
    {
        var compared = Compared(Unlocked with { Id = "relocked", LockState = LockState.Relocked, Checks = [Works("touch")] }, Unlocked, Locked);
        Assert.Equal(
            ["locked unlocked touch", "locked relocked touch", "locked unlocked colour"],
            compared.Select(each => $"{each.First.What} {each.Second.What} {each.Function}"));
    }

    public static TheoryData<SwapTrial> Unlike =>
    [
        Unlocked with { Software = "1.3" }, Unlocked with { Procedure = SwapProcedure.Calibration }, Unlocked with { LockState = null },
        Unlocked with { Installed = [new("battery", "b")] }, Unlocked with { Installed = [new("display", "b"), new("battery", "b")] },
        Unlocked with { Installed = [] }, Unlocked with { Installed = [new("display", "spare")] },
        Unlocked with { Checks = [Works("sound"), Untested("touch"), Check("colour", new OneOf<SwapResult>(SwapResult.Works, SwapResult.Notice))] },
    ];

    [Theory]
    [MemberData(nameof(Unlike), DisableDiscoveryEnumeration = true)]
    public void Only_the_same_swap_with_all_else_equal_is_compared(SwapTrial unlike) =>
        Assert.DoesNotContain(Compared(Locked, unlike), each => each.By == ComparedBy.LockState);

    [Fact]
    public void A_board_moved_the_other_way_swaps_the_same_parts() => Assert.Equal(
        "display battery camera",
        Compared(
            Locked with { Installed = [new("display", "b"), new("battery", "b"), new("camera", "b")], Checks = [Works("touch")] },
            Unlocked with { Host = "b", Installed = [new("board", "a")] }).Single().Parts.Joined());

    [Theory]
    [InlineData(SwapResult.Warning, SwapResult.Works, "procedure-restores", "warning without, works with calibration.")]
    [InlineData(SwapResult.Warning, SwapResult.Notice, "procedure-improves", "warning without, better but not right with calibration: notice.")]
    [InlineData(SwapResult.Warning, SwapResult.Warning, "procedure-changes-nothing", "warning with calibration as without.")]
    [InlineData(SwapResult.Works, SwapResult.Works, "procedure-changes-nothing", "works with calibration as without.")]
    [InlineData(SwapResult.Notice, SwapResult.Refused, "procedure-worsens", "notice without, worse with calibration: refused.")]
    public void What_a_procedure_does_to_a_function_is_told(SwapResult without, SwapResult with, string code, string text)
    {
        var finding = Assert.Single(Compared(
            Locked with { Checks = [Check("touch", without)] },
            Locked with { Id = "calibrated", Procedure = SwapProcedure.Calibration, Checks = [Check("touch", with)] })).Finding;
        Assert.Equal((code, "display from a sister unit, touch: " + text), (finding.Code, finding.Text));
    }

    [Fact]
    public void A_trial_whose_procedure_is_not_known_is_none_without_a_procedure() => Assert.Empty(Compared(
        Locked with { Procedure = null }, Locked with { Id = "calibrated", Procedure = SwapProcedure.Calibration }));

    [Theory]
    [InlineData(SwapResult.Works, "procedure-clears-part", "display is tied without a procedure and no longer after authorisation.")]
    [InlineData(SwapResult.Notice, "procedure-leaves-part-tied", "display stays tied after authorisation.")]
    public void Parts_that_a_procedure_frees_are_told(SwapResult with, string code, string text)
    {
        var comparison = Compare(
            Locked with { Checks = [Warns("touch")] },
            Locked with { Id = "authorised", Procedure = SwapProcedure.Authorisation, Checks = [Check("touch", with)] });
        var part = Assert.Single(comparison.Parts);
        Assert.Equal((code, text), (part.Finding.Code, part.Finding.Text));
        Assert.Equal("locked authorised", part.Finding.Trials.Joined());
    }

    [Theory]
    [InlineData(SwapResult.Notice, SwapResult.Notice, Fares.Alike, "display, touch: notice from a compatible spare as from a sister unit.")]
    [InlineData(SwapResult.Works, SwapResult.Refused, Fares.Worse, "display, touch: works from a sister unit, worse from a compatible spare: refused.")]
    [InlineData(SwapResult.Warning, SwapResult.Works, Fares.Better, "display, touch: warning from a sister unit, better from a compatible spare: works.")]
    public void A_spare_is_held_against_the_part_of_a_sister_unit(SwapResult sister, SwapResult spare, Fares fares, string text)
    {
        var compared = Assert.Single(Compared(
            Locked with { Id = "of-b", Checks = [Check("touch", sister)] },
            Locked with { Id = "of-spare", Installed = [new("display", "spare")], Checks = [Check("touch", spare)] }));
        Assert.Equal((ComparedBy.Source, fares, text), (compared.By, compared.Fares, compared.Finding.Text));
    }

    [Theory]
    [InlineData(SwapResult.Notice, SwapResult.Notice, "source-alike")]
    [InlineData(SwapResult.Works, SwapResult.Refused, "source-worse")]
    [InlineData(SwapResult.Warning, SwapResult.Works, "source-better")]
    public void How_a_spare_fares_has_a_code(SwapResult sister, SwapResult spare, string code) => Assert.Equal(code, Assert.Single(Compared(
        Locked with { Id = "of-b", Checks = [Check("touch", sister)] },
        Locked with { Id = "of-spare", Installed = [new("display", "spare")], Checks = [Check("touch", spare)] })).Finding.Code);

    [Fact]
    public void Spares_that_differ_from_trial_to_trial_leave_it_open()
    {
        var finding = Assert.Single(Compared(
            Locked with { Checks = [Check("touch", SwapResult.Notice)] }, Locked with { Id = "again", Checks = [Check("touch", SwapResult.Refused)] },
            Locked with { Id = "of-spare", Installed = [new("display", "spare")], Checks = [Check("touch", SwapResult.Warning)] })).Finding;
        Assert.Equal(
            ("source-open", "display, touch: notice or refused from a sister unit, warning from a compatible spare; which fares better is open."), (finding.Code, finding.Text));
    }

    [Fact]
    public void A_procedure_that_differs_from_trial_to_trial_leaves_it_open()
    {
        var finding = Assert.Single(Compared(
            Locked with { Checks = [Check("touch", SwapResult.Notice)] }, Locked with { Id = "again", Checks = [Check("touch", SwapResult.Refused)] },
            Locked with { Id = "calibrated", Procedure = SwapProcedure.Calibration, Checks = [Check("touch", SwapResult.Warning)] })).Finding;
        Assert.Equal(
            ("procedure-open", "display from a sister unit, touch: notice or refused without, warning with calibration; what it does is open."), (finding.Code, finding.Text));
    }

    [Theory]
    [InlineData(SwapResult.Refused, SwapResult.Works, "flagged-in-one-lock-state", "refused only when locked, works when unlocked.")]
    [InlineData(SwapResult.Refused, SwapResult.Notice, "lock-states-differ", "refused when locked, notice when unlocked.")]
    [InlineData(SwapResult.Notice, SwapResult.Refused, "lock-states-differ", "notice when locked, refused when unlocked.")]
    [InlineData(SwapResult.Refused, SwapResult.Refused, "lock-states-alike", "refused both when locked and when unlocked.")]
    public void What_the_lock_state_does_has_a_code(SwapResult locked, SwapResult unlocked, string code, string text)
    {
        var finding = Assert.Single(Compared(Locked with { Checks = [Check("touch", locked)] }, Unlocked with { Checks = [Check("touch", unlocked)] })).Finding;
        Assert.Equal((code, "display from a sister unit, touch: " + text), (finding.Code, finding.Text));
    }

    [Theory]
    [InlineData(5, "p1, p2, p3, p4, p5")]
    [InlineData(6, "p1, p2, p3, p4 and 2 more")]
    public void Of_many_parts_some_are_named(int parts, string named)
    {
        var ids = Enumerable.Range(1, parts).Select(i => $"p{i}").ToArray();
        var many = Locked with { Installed = [.. ids.Select(id => new InstalledPart(id, "b"))], Checks = [Works("touch")] };
        var compared = Compare(Device([Board, .. ids.Select(Part)], [], [many, many with { Id = "unlocked", LockState = LockState.Unlocked }])).Functions;
        Assert.StartsWith($"{named} from a sister unit, touch: works", Assert.Single(compared).Finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_of_an_unrecorded_source_is_another_unit() => Assert.StartsWith("display from another unit, touch: ", Assert.Single(Compared(
        Locked with { Installed = [new("display", "c")], Checks = [Works("touch")] }, Unlocked with { Installed = [new("display", "c")] })).Finding.Text, StringComparison.Ordinal);

    [Fact]
    public void A_unit_whose_source_is_not_recorded_is_compared_with_no_other() => Assert.Empty(Compared(
        Locked with { Installed = [new("display", "spare")] }, Locked with { Id = "of-c", Installed = [new("display", "c")] }));

    [Fact]
    public void Results_that_differ_from_trial_to_trial_leave_it_open()
    {
        var compared = Compared(
            Locked with { Checks = [Check("touch", SwapResult.Notice)] }, Locked with { Id = "again", Checks = [Check("touch", SwapResult.Refused)] },
            Unlocked with { Checks = [Check("touch", SwapResult.Warning)] });
        Assert.Equal(Fares.Open, Assert.Single(compared).Fares);
        Assert.Equal("display from a sister unit, touch: notice or refused when locked, warning when unlocked; whether the lock matters is open.", compared[0].Finding.Text);
    }

    [Fact]
    public void A_fault_of_the_host_is_no_effect_of_the_swap() => Assert.Equal(["touch"], Compared(
        Locked, Unlocked with { Checks = [Works("touch"), Warns("colour")] },
        Unlocked with { Id = "control", Installed = [], Checks = [Warns("colour")] }).Select(each => each.Function));

    [Fact]
    public void Units_of_unlike_model_codes_are_marked_as_not_comparable()
    {
        var compared = Compared(Locked with { Checks = [Works("touch")] }, Unlocked with { Installed = [new("display", "d")] });
        var touch = Assert.Single(compared);
        Assert.False(touch.IsComparable);
        Assert.Equal("m1 m2", touch.ModelCodes.Joined());
        Assert.EndsWith("Not comparable: the units have the model codes m1, m2.", touch.Finding.Text, StringComparison.Ordinal);
    }

    // Results of the two sides that overlap prove nothing, whichever side is the list.
    [Theory]
    [InlineData(SwapResult.Warning, SwapResult.Notice, SwapResult.Refused, Fares.Open)]
    [InlineData(SwapResult.Refused, SwapResult.Notice, SwapResult.Refused, Fares.Open)]
    [InlineData(SwapResult.Notice, SwapResult.Notice, SwapResult.Refused, Fares.Open)]
    [InlineData(SwapResult.Refused, SwapResult.Notice, SwapResult.Warning, Fares.Better)]
    [InlineData(SwapResult.Notice, SwapResult.Warning, SwapResult.Refused, Fares.Worse)]
    public void A_list_on_the_second_side_is_judged_by_its_ends(SwapResult first, SwapResult best, SwapResult worst, Fares fares)
    {
        var compared = Assert.Single(Compared(
            Locked with { Checks = [Check("touch", first)] },
            Unlocked with { Checks = [Check("touch", best)] }, Unlocked with { Id = "again", Checks = [Check("touch", worst)] }));
        Assert.Equal(fares, compared.Fares);
    }

    [Fact]
    public void Parts_from_units_of_several_kinds_are_named_one_by_one()
    {
        var mixed = Locked with { Installed = [new("display", "b"), new("battery", "spare")], Checks = [Works("touch")] };
        var finding = Assert.Single(Compared(mixed, mixed with { Id = "unlocked", LockState = LockState.Unlocked })).Finding;
        Assert.Equal("display, battery from several units (display device, battery compatible-spare), touch: works both when locked and when unlocked.", finding.Text);
    }

    [Fact]
    public void A_unit_that_hosts_trials_is_a_sister_unit_whatever_is_recorded_of_it() => Assert.StartsWith("display from a sister unit, touch: ", Assert.Single(Compared(
        Locked with { Installed = [new("display", "c")], Checks = [Works("touch")] }, Unlocked with { Installed = [new("display", "c")] },
        Locked with { Id = "control", Host = "c", Installed = [], Checks = [Works("sound")] })).Finding.Text, StringComparison.Ordinal);

    [Fact]
    public void Facts_of_lock_states_name_the_donor_twice_and_the_sides_once()
    {
        var values = Assert.Single(Compared(Locked with { Checks = [Works("touch")] }, Unlocked)).Finding.Why.Values;
        Assert.Equal(
            "parts=display function=touch donor=a sister unit otherDonor=a sister unit first=locked firstResult=works second=unlocked secondResult=works modelCodes=m1",
            values.Select(value => $"{value.Name}={value.Value.Text}").Joined());
    }

    [Fact]
    public void Model_codes_come_in_the_order_in_which_they_come_up() => Assert.Equal("m1 m2", Assert.Single(Compared(
        Locked with { Installed = [new("display", "d")], Checks = [Works("touch")] }, Unlocked with { Installed = [new("display", "d")] })).ModelCodes.Joined());

    [Fact]
    public void Findings_are_those_of_functions_and_then_those_of_parts()
    {
        var comparison = Compare(
            Locked with { Checks = [Warns("touch")] },
            Locked with { Id = "authorised", Procedure = SwapProcedure.Authorisation, Checks = [Works("touch")] });
        Assert.Equal(["procedure-restores", "procedure-clears-part"], comparison.Findings.Select(finding => finding.Code));
    }

    [Fact]
    public void A_unit_of_two_possible_kinds_is_one_of_both_best_known_first()
    {
        var swap = Locked with { Installed = [new("display", "either")], Checks = [Works("touch")] };
        var record = Phone(swap, swap with { Id = "unlocked", LockState = LockState.Unlocked });
        var compared = Compare(record, new AssessedUnit { Id = "either", Source = new(UnitSource.CompatibleSpare, UnitSource.MakerSpare) });
        Assert.StartsWith("display from a maker spare or compatible spare, touch: ", Assert.Single(compared.Functions).Finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_trials_there_is_nothing_to_compare() => Assert.Empty(Compare().Findings);

    static System.Collections.Immutable.ImmutableArray<ComparedFunction> Compared(params SwapTrial[] swaps) => Compare(swaps).Functions;

    static ContextComparison Compare(params SwapTrial[] swaps) => Compare(Phone(swaps));

    static ContextComparison Compare(TeardownRecord record, params AssessedUnit[] more) => new RecordCase(record with
    {
        Assessment = record.Assessment with
        {
            Units =
            [
                new() { Id = "a", ModelCode = "m1" }, new() { Id = "b", ModelCode = "m1", Source = UnitSource.Device }, new() { Id = "c" },
                new() { Id = "d", ModelCode = "m2", Source = UnitSource.Device }, new() { Id = "spare", Source = UnitSource.CompatibleSpare },
                .. more,
            ],
        },
    }).Derive<ContextComparison>();
}
