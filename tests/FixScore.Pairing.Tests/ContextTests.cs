using FixScore.Records;
using static FixScore.Pairing.Tests.Bench;

namespace FixScore.Pairing.Tests;

public sealed class ContextTests
{
    static readonly SwapTrial Flagged = Swap("t1", "display=b battery=b", Warns()) with { LockState = LockState.Locked, Software = "1.2", Procedure = SwapProcedure.None };
    static readonly SwapTrial Clean = Swap("t2", "battery=b", Works()) with { LockState = LockState.Locked, Software = "1.2", Procedure = SwapProcedure.None };

    [Fact]
    public void Trials_of_one_context_are_read_together()
    {
        var context = Assert.Single(Infer(Phone(Flagged, Clean)).Contexts);
        Assert.Equal(new SwapContext(LockState.Locked, "1.2", SwapProcedure.None), context.Context);
        Assert.Equal("lock state locked, software 1.2, procedure none", context.Context.ToString());
        Assert.Equal(Verdict.Paired, context.VerdictOn("display"));
    }

    public static TheoryData<SwapTrial> Elsewhere =>
    [
        Clean with { LockState = LockState.Relocked }, Clean with { LockState = null },
        Clean with { Software = "1.3" }, Clean with { Software = null },
        Clean with { Procedure = SwapProcedure.Calibration }, Clean with { Procedure = null },
    ];

    [Theory]
    [MemberData(nameof(Elsewhere), DisableDiscoveryEnumeration = true)]
    public void Other_contexts_are_inferred_apart_and_not_observed_is_a_value_of_its_own(SwapTrial elsewhere)
    {
        var verdicts = Infer(Phone(Flagged, elsewhere));
        Assert.Equal(2, verdicts.Contexts.Length);
        Assert.Equal(Verdict.Suspect, verdicts.Contexts[0].VerdictOn("display"));
        Assert.Equal(Verdict.Cleared, verdicts.Contexts[1].VerdictOn("battery"));
    }

    [Fact]
    public void Trials_that_disagree_in_different_contexts_do_not_contradict()
    {
        var verdicts = Infer(Phone(Swap("t1", "display=b", Warns()), Swap("t2", "display=b", Works()) with { Procedure = SwapProcedure.Calibration }));
        Assert.True(verdicts.IsConsistent);
    }

    [Fact]
    public void A_record_without_trials_has_no_context() => Assert.Empty(Infer(Phone() with { Swaps = default }).Contexts);
}
