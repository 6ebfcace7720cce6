using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>In what the two sides of a comparison differ, all else being equal.</summary>
public enum ComparedBy
{
    /// <summary>In the state of the boot lock.</summary>
    LockState,

    /// <summary>In what was done after the swap: nothing, or a procedure of the maker.</summary>
    Procedure,

    /// <summary>In where the parts came from: a sister unit, or a loose spare of some kind.</summary>
    Source,
}

/// <summary>How the second side of a comparison fares against the first.</summary>
public enum Fares
{
    /// <summary>Both have the same result.</summary>
    Alike,

    /// <summary>The second is better for certain.</summary>
    Better,

    /// <summary>The second is worse for certain.</summary>
    Worse,

    /// <summary>Results that are lists of words leave it open.</summary>
    Open,
}

/// <summary>One side of a comparison.</summary>
/// <param name="What">The word that sets it apart, such as <c>unlocked</c>, <c>calibration</c> or <c>compatible-spare</c>.</param>
/// <param name="Context">The context of its trials.</param>
/// <param name="Result">What was seen: one word, or all that are possible or were seen in different trials, best first.</param>
/// <param name="Trials">The trials, in the order of the record; one at least.</param>
public sealed record ComparedSide(string What, SwapContext Context, OneOf<SwapResult> Result, ImmutableArray<SwapTrial> Trials);

/// <summary>One function after one swap, under two circumstances.</summary>
/// <param name="By">In what the sides differ.</param>
/// <param name="Parts">Ids of the foreign parts, the same on both sides, in the order of the record.</param>
/// <param name="Function">The function.</param>
/// <param name="First">The side that the other is held against: the lock state nearest to delivery, no procedure, a sister unit.</param>
/// <param name="Second">The other side.</param>
/// <param name="Fares">How the second side fares against the first.</param>
/// <param name="ModelCodes">The model codes of all units involved, each once; more than one makes the sides not comparable.</param>
/// <param name="Finding">The same as a finding.</param>
public sealed record ComparedFunction(
    ComparedBy By,
    ImmutableArray<string> Parts,
    string Function,
    ComparedSide First,
    ComparedSide Second,
    Fares Fares,
    ImmutableArray<string> ModelCodes,
    TrialFinding Finding)
{
    /// <summary>Whether the units are of one model code, as far as known.</summary>
    public bool IsComparable => ModelCodes.Length < 2;
}

/// <summary>A part that is tied to the main board when nothing is done after the swap, and what a procedure does about it.</summary>
/// <param name="Part">The part.</param>
/// <param name="Without">The context without a procedure, in which it is <see cref="Verdict.Paired"/>.</param>
/// <param name="With">The context with the procedure.</param>
/// <param name="Verdict">The verdict with the procedure: <see cref="Verdict.Cleared"/>, or still <see cref="Verdict.Paired"/>.</param>
/// <param name="Finding">The same as a finding.</param>
public sealed record PartAfterProcedure(Part Part, SwapContext Without, SwapContext With, Verdict Verdict, TrialFinding Finding);
