using FixScore.Records;

namespace FixScore.Pairing.Comparison;

/// <summary>What procedures do about parts that are tied without one: verdicts of two contexts that differ in the procedure alone.</summary>
static class ProcedureEffects
{
    public static IEnumerable<PartAfterProcedure> Of(TeardownCase source)
    {
        var consistent = source.Derive<PairingVerdicts>().Contexts.Where(context => context.IsConsistent).ToArray();
        return
            from without in consistent
            where without.Context.Procedure == SwapProcedure.None
            from with in consistent
            where with.Context.Procedure is not null and not SwapProcedure.None
                && with.Context with { Procedure = SwapProcedure.None } == without.Context
            from tied in without.Parts
            where tied.Verdict == Verdict.Paired
            let then = with.Of(tied.Part.Id)!
            where then.Verdict is Verdict.Paired or Verdict.Cleared
            select new PartAfterProcedure(tied.Part, without.Context, with.Context, then.Verdict, Finding(source, tied, then, with.Context));
    }

    static TrialFinding Finding(TeardownCase source, PartVerdict without, PartVerdict with, SwapContext context)
    {
        var (code, template) = with.Verdict == Verdict.Cleared
            ? ("procedure-clears-part", "{part} is tied without a procedure and no longer after {procedure}.")
            : ("procedure-leaves-part-tied", "{part} stays tied after {procedure}.");
        string[] trials = [.. without.Because, .. with.Because];
        return new(
            Reason.Of(code, template, source.Record.Swaps.Where(trial => trials.Contains(trial.Id)).Select(source.At),
                ("part", without.Part.Id), ("procedure", Word.Of(context.Procedure!.Value))),
            [.. trials]);
    }
}
