using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Inference;

/// <summary>How a check is read. What neither works for certain nor is worse for certain counts as untested.</summary>
static class CheckReading
{
    public static bool Works(this FunctionCheck check) => check.Result.Is(SwapResult.Works);

    public static bool IsFlag(this FunctionCheck check) =>
        !check.Result.IsUnknown && check.Result.Stated.All(word => word is > SwapResult.Works and < SwapResult.Untested);

    public static bool MayBlame(this FunctionCheck check, string part) =>
        !check.Implicates.IsRecorded || check.Implicates.AsArray().Contains(part);

    /// <summary>What the worst of several flags can be, best first.</summary>
    public static OneOf<SwapResult> WorstOf(IEnumerable<FunctionCheck> flags)
    {
        var results = flags.Select(flag => flag.Result.Stated).ToImmutableArray();
        var least = results.Max(words => words.Min());
        return new([.. results.SelectMany(words => words).Where(word => word >= least).Distinct().Order()]);
    }

    public static SwapResult Worst(this FunctionCheck flag) => flag.Result.Stated.Max();
}
