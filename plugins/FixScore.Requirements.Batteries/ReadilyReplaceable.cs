using FixScore.Pairing;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>Article 11(6): another compatible battery takes the place of the first without loss of function, performance or safety.</summary>
/// <remarks>
/// Only trials with a battery of a unit that is a <c>compatible-spare</c> count. A message with everything working is no loss
/// of function. A loss that some procedure cures on the same software is unknown. Safety is not in a trial.
/// </remarks>
static class ReadilyReplaceable
{
    public static Requirement Of(BatteryDevice batteries) =>
        new("readily-replaceable", "Art. 11(6)", () => batteries.ForAll(battery => Judge(batteries, battery)));

    static Answer Judge(BatteryDevice batteries, Part battery)
    {
        var all = BatteryTrials.Of(batteries, battery);
        Answer[] answers =
        [
            .. from seen in all
               from trial in BatteryTrials.WithCompatible(batteries, battery, seen)
               let fits = Fits(seen, trial)
               select Answer.Of(fits == false && all.IsCured(seen) ? null : fits, TrialReasons.Compatible(batteries.Case, battery, trial, seen, fits)),
        ];
        return answers.Length > 0 ? Answer.All(answers) : Answer.Unknown(TrialReasons.NoneCompatible(batteries.Case, battery));
    }

    static bool? Fits(SeenBattery seen, SwapTrial trial)
    {
        if (seen.IsCleared) return trial.Checks.Any(check => check.Result.Is(SwapResult.Works)) ? true : null;
        if (!seen.IsTied) return null;
        FlaggedCheck[] flags = [.. seen.Found.Flags.Where(flag => flag.Trial.Id == trial.Id)];
        return flags.Length == 0 ? null : !Known.Any(flags.Select(SeenBattery.IsLoss));
    }
}
