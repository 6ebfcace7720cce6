using System.Collections.Immutable;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Requirements.PairingLaws;

/// <summary>What one context of trials concludes of parts that are replaced together.</summary>
sealed record SeenTrials(ContextVerdicts Trials, Conclusion Found)
{
    public SwapProcedure? Procedure => Trials.Context.Procedure;

    public bool IsCleared => Trials.IsConsistent && Found.Verdict == Verdict.Cleared;

    public bool IsTied => Trials.IsConsistent && Found.Verdict == Verdict.Paired;

    /// <summary>Whether it works once something known was done after the swap.</summary>
    public bool IsCure => IsCleared && Procedure is not (null or SwapProcedure.None);
}

/// <summary>What trials show of one effect on parts that are replaced together.</summary>
/// <param name="Effect">The effect.</param>
/// <param name="Parts">The parts that can carry a code, in the order of the record.</param>
/// <param name="Shown">What is shown.</param>
/// <param name="Seen">Contexts with the boot lock as delivered in which they were tried, in the order of the record.</param>
sealed record PartEffect(SwapEffect Effect, ImmutableArray<Part> Parts, Shown Shown, ImmutableArray<SeenTrials> Seen);

/// <summary>Which of the banned effects swap trials prove, rule out or leave open, for each part or group of parts that is replaced together.</summary>
/// <remarks>
/// <para>Only trials with the boot lock as delivered count: an opened lock may change what the software does, and no maker owes
/// anything for that. A lock state that was not recorded proves nothing.</para>
/// <para><b>Proven</b>: in one of these contexts, with whatever procedure, the part is proven tied and one of the checks that
/// prove it certainly has the effect's result; unless it works after some procedure on the same software. <b>Ruled out</b>: in
/// all of these contexts it is proven not tied, on each software at least once without any procedure. A part tied with another
/// effect rules nothing out: trials prove that it is tied, not that no other function suffers.</para>
/// <para>Inert parts and the main board's group have no verdict and are left out.</para>
/// </remarks>
sealed record SwapEffects(ImmutableArray<PartEffect> All) : IFact<SwapEffects>
{
    public static SwapEffects From(TeardownCase source, CancellationToken cancellation)
    {
        var contexts = source.Derive<PairingVerdicts>().Contexts.Where(context => context.Context.LockState == LockState.Locked).ToImmutableArray();
        return new([.. source.Derive<PartGroups>().All.Where(IsJudged).SelectMany(group => Of([.. group.Parts.Where(part => !part.Inert)], contexts))]);
    }

    static bool IsJudged(PartGroup group) => !group.Parts.Any(part => part.Role == Roles.Mainboard) && group.Parts.Any(part => !part.Inert);

    static IEnumerable<PartEffect> Of(ImmutableArray<Part> parts, ImmutableArray<ContextVerdicts> contexts)
    {
        ImmutableArray<SeenTrials> seen = [.. contexts.Select(context => new SeenTrials(context, context.Of(parts[0].Id)!.OfGroup)).Where(each => each.Found.Verdict != Verdict.Untested)];
        return Enum.GetValues<SwapEffect>().Select(effect => new PartEffect(effect, parts, ShownBy(effect, seen), seen));
    }

    static Shown ShownBy(SwapEffect effect, ImmutableArray<SeenTrials> seen) => seen.IsEmpty
        ? Shown.NotTried
        : seen.GroupBy(each => each.Trials.Context.Software).Min(software => OnOneSoftware(effect, [.. software]));

    static Shown OnOneSoftware(SwapEffect effect, ImmutableArray<SeenTrials> seen)
    {
        var worst = seen.Min(each => InOneContext(effect, each));
        if (worst < Shown.Cleared) return seen.Any(each => each.IsCure) ? Shown.AfterProcedure : worst;
        return seen.Any(each => each.Procedure == SwapProcedure.None) ? Shown.Cleared : Shown.AfterProcedure;
    }

    static Shown InOneContext(SwapEffect effect, SeenTrials seen)
    {
        if (seen.IsCleared) return Shown.Cleared;
        if (!seen.IsTied) return Shown.Unsettled;
        if (seen.Found.Flags.Any(flag => effect.IsShownBy(flag.Check))) return Shown.Proven;
        return seen.Found.Flags.Any(flag => effect.MayBeShownBy(flag.Check)) ? Shown.Dismissible : Shown.Unsettled;
    }
}
