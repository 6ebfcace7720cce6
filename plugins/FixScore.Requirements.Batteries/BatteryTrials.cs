using System.Collections.Immutable;
using FixScore.Pairing;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>What one context of trials concludes of the battery and what is replaced with it.</summary>
sealed record SeenBattery(ContextVerdicts Trials, Conclusion Found)
{
    public SwapContext Context => Trials.Context;

    public bool IsCleared => Trials.IsConsistent && Found.Verdict == Verdict.Cleared;

    public bool IsTied => Trials.IsConsistent && Found.Verdict == Verdict.Paired;

    /// <summary>Whether it works once something known was done after the swap.</summary>
    public bool IsCure => IsCleared && Context.Procedure is not (null or SwapProcedure.None);

    /// <summary>Whether a flag leaves the function reduced or gone; <c>null</c> when it may.</summary>
    public static bool? IsLoss(FlaggedCheck flag) =>
        flag.Check.Result.Fits(result => result is SwapResult.Degraded or SwapResult.Refused);
}

/// <summary>Trials in which the battery came from elsewhere, with the boot lock as delivered: an opened lock may change what software does.</summary>
static class BatteryTrials
{
    /// <summary>Contexts in which the battery was tried, in the order of the record.</summary>
    public static ImmutableArray<SeenBattery> Of(BatteryDevice batteries, Part battery) =>
    [
        .. batteries.Case.Derive<PairingVerdicts>().Contexts
            .Where(context => context.Context.LockState == LockState.Locked)
            .Select(context => (context, Verdict: context.Of(battery.Id)))
            .Where(each => each.Verdict is { OfGroup.Verdict: not Verdict.Untested })
            .Select(each => new SeenBattery(each.context, each.Verdict!.OfGroup)),
    ];

    /// <summary>Whether the same software takes the battery after some procedure.</summary>
    public static bool IsCured(this ImmutableArray<SeenBattery> all, SeenBattery seen) =>
        all.Any(other => other.IsCure && other.Context.Software == seen.Context.Software);

    /// <summary>The trials in which the battery was a compatible one of somebody else.</summary>
    public static IEnumerable<SwapTrial> WithCompatible(BatteryDevice batteries, Part battery, SeenBattery seen)
    {
        var group = batteries.GroupOf(battery);
        return seen.Trials.Trials.Where(trial => trial.Installed.Any(installed => group.Holds(installed.Part) && IsCompatible(batteries.Record, installed.Unit)));
    }

    static bool IsCompatible(TeardownRecord record, string unit) =>
        record.Assessment.Units.Any(each => each.Id == unit && each.Source.Is(UnitSource.CompatibleSpare));
}
