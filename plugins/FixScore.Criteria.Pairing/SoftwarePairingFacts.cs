using System.Collections.Immutable;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Criteria.Pairing;

/// <summary>What one context says about a part and all that is replaced with it.</summary>
sealed record Observed(ContextVerdicts Trials, Conclusion Found)
{
    public SwapContext Context => Trials.Context;

    /// <summary>The results the part can have; all, where the trials contradict each other.</summary>
    public IEnumerable<SwapResult> Results => Found.Verdict == Verdict.Paired
        ? Found.Worst.Stated
        : SoftwarePairingFacts.AllResults.Where(result => result <= Found.AtWorst);

    public IEnumerable<SwapTrial> Because => Trials.Trials.Where(trial => Found.Because.Contains(trial.Id));
}

/// <summary>What is known of a part: trials that count, trials of other procedures, the maker's demands.</summary>
/// <param name="IsJudged">Whether trials can say anything about it; not for the main board and what is replaced with it.</param>
/// <param name="Counted">Contexts that count and in which it was tried.</param>
/// <param name="Restored">Contexts that do not count, in which it works although a counted one of the same lock state and software ties it.</param>
/// <param name="Demands">The notification and the authorisation demanded.</param>
sealed record SoftwarePairingFacts(
    bool IsJudged, ImmutableArray<Observed> Counted, ImmutableArray<Observed> Restored, ImmutableArray<OneOf<SerialAction>> Demands)
{
    public static ImmutableArray<SwapResult> AllResults { get; } =
        [SwapResult.Works, SwapResult.Notice, SwapResult.Warning, SwapResult.Degraded, SwapResult.Refused];

    public bool AllCleared => !Counted.IsEmpty && Counted.All(each => each.Found.Verdict == Verdict.Cleared);

    public bool DemandsUnknown => Demands.All(demand => demand.IsUnknown);

    public static SoftwarePairingFacts Of(TeardownCase source, Part part, ImmutableArray<string> procedures)
    {
        var tried = source.Derive<PairingVerdicts>().Contexts
            .Select(context => (context, Verdict: context.Of(part.Id)))
            .Where(each => each.Verdict is { OfGroup.Verdict: not Verdict.Untested })
            .Select(each => new Observed(each.context, each.Verdict!.OfGroup))
            .ToLookup(each => procedures.Contains(ProcedureOf(each.Context)));
        var tied = tried[true].Where(each => each.Found.Verdict == Verdict.Paired).Select(each => AsFirstFitted(each.Context)).ToArray();
        return new(
            !source.Derive<PartGroups>().Of(part.Id).Parts.Any(each => each.Role == Roles.Mainboard),
            [.. tried[true]],
            [.. tried[false].Where(each => each.Found.Verdict == Verdict.Cleared && tied.Contains(AsFirstFitted(each.Context)))],
            [part.Serialised?.Notify ?? default, part.Serialised?.Authorise ?? default]);
    }

    static string ProcedureOf(SwapContext context) =>
        context.Procedure is { } known ? Word.Of(known) : SoftwarePairingOptions.UnknownProcedure;

    static SwapContext AsFirstFitted(SwapContext context) => context with { Procedure = null };
}
