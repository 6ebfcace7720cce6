using System.Collections.Immutable;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Reporting.Reports;

/// <summary>Short marks of a swap-trial matrix: where a part came from, and what came of a trial. Letters and signs of our own.</summary>
sealed class MatrixMarks(TeardownRecord record, ForeignInTrials foreign)
{
    public static ImmutableArray<string> Legend { get; } =
    [
        "Part by part: x, it came from another device than the main board; s, it was a loose spare; -, it is of the same device as the main board.",
        "What came of it: +, all works; !, something is worse than before, which in a control is a fault of the host itself; ?, not all was tested with a certain result.",
        "Verdict: tied to the main board, free, or open, as the trials can be explained with and without a tie. A part is tied as a group when it only comes together with others, one of which is tied for certain.",
        "Proof: the trials that together prove the verdict.",
    ];

    public string Origin(string part, SwapTrial trial) =>
        foreign.Of(trial).FirstOrDefault(each => each.Part == part) is not { } from ? "-" : IsLoose(from.Unit) ? "s" : "x";

    public static string Outcome(SwapTrial trial) =>
        trial.Checks.Any(IsWorse) ? "!"
        : trial.Checks.IsEmpty || !trial.Checks.All(check => check.Result.Is(SwapResult.Works)) ? "?"
        : "+";

    static bool IsWorse(FunctionCheck check) =>
        !check.Result.IsUnknown && check.Result.Stated.All(result => result is > SwapResult.Works and < SwapResult.Untested);

    // A unit that hosts trials is a device, whatever else is known of it.
    bool IsLoose(string unit) => record.Swaps.All(trial => trial.Host != unit)
        && record.Assessment.Units.FirstOrDefault(each => each.Id == unit) is { Source.IsUnknown: false } known && !known.Source.MayBe(UnitSource.Device);
}
