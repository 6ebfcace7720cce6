using FixScore.Pairing.Ties;
using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests.Ties;

public sealed class TieCheckTests
{
    static Problem[] Problems(params SwapTrial[] swaps) => [.. new TieCheck().Check(new RecordCase(Phone(swaps)))];

    [Fact]
    public void A_part_paired_by_one_swap_has_another_reading_that_is_found_but_not_warned_of()
    {
        var source = new RecordCase(Phone(Swap("t1", "display=b", Warns())));
        Assert.Empty(new TieCheck().Check(source));
        var finding = Assert.Single(Assert.Single(source.Derive<PairTies>().Contexts).Findings);
        Assert.Equal((TieFindingKind.MayBeBetweenParts, "display"), (finding.Kind, finding.Part));
        Assert.Equal(["display + battery", "display + camera"], finding.Between.Select(tie => tie.ToString()));
    }

    [Fact]
    public void Trials_that_only_a_tie_between_parts_explains_are_warned_of()
    {
        SwapTrial[] swaps = [Swap("t1", "board=b", Works()), Swap("t2", "display=b", Warns()), Swap("t3", "camera=b", Works())];
        Assert.False(Infer(swaps).IsConsistent);
        var problem = Assert.Single(Problems(swaps));
        Assert.Equal("swaps.ties-only-between-parts", problem.Code);
        Assert.Equal(Severity.Warning, problem.Severity);
        Assert.Equal(["/swaps/1"], problem.Why.Pointers.Select(pointer => pointer.Text));
        Assert.StartsWith("No part tied to the main board explains what t2 showed; a tie between two parts may: display + battery (", problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("()", problem.Message, StringComparison.Ordinal);
        Assert.Equal("Put in both parts of such a pair from one unit, or the main board alone: neither breaks a tie between the two.", problem.Hint);
    }

    [Fact]
    public void Three_ties_are_all_named()
    {
        var record = Device([Board, .. "abcd".Select(id => Part($"{id}"))], [], [Swap("t1", "board=b", Works()), Swap("t2", "a=b", Warns())]);
        Assert.Contains("may: a + b, a + c, a + d (", Assert.Single(new TieCheck().Check(new RecordCase(record))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_many_ties_the_first_three_are_named()
    {
        var record = Device([Board, .. "abcdef".Select(id => Part($"{id}"))], [], [Swap("t1", "board=b", Works()), Swap("t2", "a=b", Warns())]);
        Assert.Contains("a + b, a + c, a + d and 2 more", Assert.Single(new TieCheck().Check(new RecordCase(record))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_said_where_both_readings_agree() =>
        Assert.Empty(Problems(Swap("t1", "display=b", Warns()), Swap("t2", "battery=b", Works()), Swap("t3", "camera=b", Works())));
}
