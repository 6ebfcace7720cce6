using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>Warns of swap trials that cannot all be right: no set of tied parts explains them.</summary>
/// <remarks>The record stays valid; verdicts of the context mean nothing. One warning for each smallest set of trials.</remarks>
public sealed class PairingCheck : IRecordCheck
{
    /// <summary>The code of its problems.</summary>
    public const string Contradiction = "swaps.contradiction";

    /// <inheritdoc/>
    public string Id => "swap-trials-agree";

    /// <inheritdoc/>
    public IEnumerable<Problem> Check(TeardownCase source) =>
        from context in source.Derive<PairingVerdicts>().Contexts
        from contradiction in context.Contradictions
        select Warning(source, context, [.. context.Trials.Where(trial => contradiction.Contains(trial.Id))]);

    static Problem Warning(TeardownCase source, ContextVerdicts context, SwapTrial[] trials) => new(
        Severity.Warning,
        source.At(trials[0]),
        Reason.Of(
            Contradiction,
            trials.Length == 1
                ? "Trial {trials} cannot be right: it flags a function although no part that may be the cause is foreign in it ({context})."
                : "Trials {trials} cannot all be right: no part that one of them blames is left by the others ({context}).",
            trials.Select(source.At),
            ("trials", string.Join(", ", trials.Select(trial => trial.Id))),
            ("context", context.Context.ToString())),
        "Repeat these trials, add a control (a trial with nothing installed) for each host, and check which parts each function implicates.");
}
