using System.Collections.Immutable;
using FixScore.Pairing.Inference;
using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>Warns of swap trials that do not say how an essential function of a foreign part behaved: what they clear may be less than it seems.</summary>
/// <remarks>The functions are those of <see cref="PartFunctions"/>; one warning for each trial. A function that the trial names as untested is no slip: verdicts
/// take it into account. A trial without any check is told elsewhere.</remarks>
public sealed class FunctionCoverageCheck : IRecordCheck
{
    /// <summary>The code of its problems.</summary>
    public const string Untested = "swaps.function-untested";

    /// <inheritdoc/>
    public string Id => "swap-trials-functions";

    /// <inheritdoc/>
    public IEnumerable<Problem> Check(TeardownCase source)
    {
        var foreign = new ForeignParts(source.Record, source.Derive<PartGroups>());
        return
            from trial in source.Record.Swaps
            where !trial.Checks.IsEmpty
            let missing = Missing(source.Record, trial, foreign.In(trial))
            where !missing.IsEmpty
            select Warning(source, trial, missing);
    }

    static ImmutableArray<PartFunction> Missing(TeardownRecord record, SwapTrial trial, ImmutableArray<string> foreign)
    {
        var named = trial.Checks.Select(check => check.Function).ToArray();
        // Where the main board moved, everything else is foreign: asking for every function would drown the rest.
        if (trial.Installed.Any(each => record.Parts.Any(part => part.Id == each.Part && part.Role == Roles.Mainboard))) return [];
        return [.. record.Parts.Where(part => foreign.Contains(part.Id)).SelectMany(part => PartFunctions.Of(part.Role))
            .Where(function => function.IsEssential && !named.Any(function.IsCheckedBy)).DistinctBy(function => function.Function)];
    }

    static Problem Warning(TeardownCase source, SwapTrial trial, ImmutableArray<PartFunction> missing) => Problem.Of(
        Severity.Warning, source.At(trial), Untested,
        "Trial {trial} does not say how functions of its foreign parts behaved: {functions}.",
        "Check them, or write them down as untested: what a trial does not look at, it cannot clear.",
        ("trial", trial.Id), ("functions", string.Join(", ", missing.Select(function => function.Function))));
}
