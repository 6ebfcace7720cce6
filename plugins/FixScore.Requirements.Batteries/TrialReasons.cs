using FixScore.Pairing;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>What trials say about a battery from elsewhere.</summary>
static class TrialReasons
{
    public static Reason NoneCompatible(TeardownCase source, Part battery) => Reason.Of(
        "no-compatible-trial", "No trial with the boot lock as delivered put a compatible battery of somebody else in the place of {part}.",
        [source.At(battery)], ("part", Shown.Of(battery)));

    public static Reason NoneTried(TeardownCase source, Part battery) => Reason.Of(
        "not-tried", "{part} was not replaced in any trial with the boot lock as delivered.", [source.At(battery)], ("part", Shown.Of(battery)));

    public static Reason Compatible(TeardownCase source, Part battery, SwapTrial trial, SeenBattery seen, bool? fits) => Reason.Of(
        fits switch { true => "compatible-works", false => "compatible-loss", _ => "compatible-open" },
        fits switch
        {
            true => "With a compatible battery in the place of {part} the functions checked in trial {trial} are as before ({context}). Safety is not judged.",
            false => "With a compatible battery in the place of {part}: {checks} in trial {trial} ({context}).",
            _ => "Trial {trial} with a compatible battery in the place of {part} leaves it open: {checks} ({context}).",
        },
        [source.At(battery), source.At(trial)],
        ("part", Shown.Of(battery)), ("trial", trial.Id), ("checks", Checks(trial.Checks)), ("context", seen.Context.ToString()));

    public static Reason Software(TeardownCase source, Part battery, SeenBattery seen)
    {
        var trials = seen.Trials.Trials.Where(trial => seen.Found.Because.Contains(trial.Id)).ToArray();
        return Reason.Of(
            CodeOf(seen), TemplateOf(seen), [source.At(battery), .. trials.Select(source.At), .. seen.Found.Flags.Select(flag => source.At(flag.Check))],
            ("part", Shown.Of(battery)), ("trials", string.Join(", ", trials.Select(trial => trial.Id))),
            ("checks", Checks(seen.Found.Flags.Select(flag => flag.Check))), ("context", seen.Context.ToString()));
    }

    static string CodeOf(SeenBattery seen) => seen switch
    {
        { Trials.IsConsistent: false } => "contradictory-trials",
        { Found.Verdict: Verdict.Cleared } => seen.Context.Procedure == SwapProcedure.None ? "not-tied" : "works-after-procedure",
        { Found.Verdict: Verdict.Paired } => "tied",
        _ => "suspect",
    };

    static string TemplateOf(SeenBattery seen) => CodeOf(seen) switch
    {
        "contradictory-trials" => "Nothing is known of {part}, for trials contradict each other ({context}).",
        "not-tied" => "{part} from elsewhere works like the original, shown by {trials} ({context}).",
        "works-after-procedure" => "{part} from elsewhere is shown to work by {trials}, but maybe only after a procedure ({context}).",
        "tied" => "{part} is tied to the main board: {checks}, proven by {trials} ({context}).",
        _ => "{part} was swapped, and trials neither tie nor clear it ({context}).",
    };

    static string Checks(IEnumerable<FunctionCheck> checks) => string.Join(", ", checks.Select(check => $"{check.Function} {Shown.Of(check.Result)}"));
}
