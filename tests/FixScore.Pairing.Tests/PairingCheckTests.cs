using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

/// <summary>Trials that cannot all be right are a warning about the record, with what to do.</summary>
public sealed class PairingCheckTests
{
    const string Hint = "Repeat these trials, add a control (a trial with nothing installed) for each host, and check which parts each function implicates.";

    [Fact]
    public void Trials_that_cannot_all_be_right_are_named_with_their_context()
    {
        var problem = Assert.Single(Problems(Swap("t1", "display=b", Works()), Swap("t2", "display=b", Warns())));
        Assert.StartsWith("Trials t1, t2 cannot all be right: no part that one of them blames is left by the others (", problem.Message, StringComparison.Ordinal);
        Assert.EndsWith(").", problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("()", problem.Message, StringComparison.Ordinal);
        Assert.Equal((Severity.Warning, "/swaps/0", Hint), (problem.Severity, problem.At.Text, problem.Hint));
    }

    [Fact]
    public void A_trial_that_cannot_be_right_by_itself_is_named()
    {
        var problem = Assert.Single(Problems(Swap("t1", "display=b", Warns("touch", "battery"))));
        Assert.StartsWith("Trial t1 cannot be right: it flags a function although no part that may be the cause is foreign in it (", problem.Message, StringComparison.Ordinal);
        Assert.Equal(Hint, problem.Hint);
    }

    [Fact]
    public void Trials_that_agree_are_no_problem() => Assert.Empty(Problems(Swap("t1", "display=b", Works()), Swap("t2", "battery=b", Warns())));

    static Problem[] Problems(params SwapTrial[] swaps) => [.. new PairingCheck().Check(new RecordCase(Phone(swaps)))];
}
