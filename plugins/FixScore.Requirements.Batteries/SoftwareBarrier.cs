using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>Article 11(8): software does not impede the replacement by another compatible battery.</summary>
/// <remarks>
/// Met when trials show the battery not tied with nothing done after the swap; not met when they prove it tied with a
/// function reduced or gone, and no procedure cures that on the same software. A message alone is unknown: whether it
/// impedes the replacement is a legal question.
/// </remarks>
static class SoftwareBarrier
{
    public static Requirement Of(BatteryDevice batteries) =>
        new("no-software-barrier", "Art. 11(8)", () => batteries.ForAll(battery => Judge(batteries, battery)));

    static Answer Judge(BatteryDevice batteries, Part battery)
    {
        var all = BatteryTrials.Of(batteries, battery);
        SeenBattery[] asFitted = [.. all.Where(seen => !seen.IsCure)];
        if (asFitted.Length > 0) return Answer.All(asFitted.Select(seen => Answer.Of(IsFree(seen, all.IsCured(seen)), TrialReasons.Software(batteries.Case, battery, seen))));
        return Answer.Unknown(all.IsEmpty ? TrialReasons.NoneTried(batteries.Case, battery) : TrialReasons.Software(batteries.Case, battery, all[0]));
    }

    static bool? IsFree(SeenBattery seen, bool isCured)
    {
        if (seen.IsCleared) return seen.Context.Procedure == SwapProcedure.None ? true : null;
        return seen.IsTied && !isCured && Known.Any(seen.Found.Flags.Select(SeenBattery.IsLoss)) == true ? false : null;
    }
}
