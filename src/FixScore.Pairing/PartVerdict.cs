using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>The verdict on a part in one context.</summary>
/// <remarks>
/// Parts of one group (<see cref="PartGroups"/>) are always swapped together. When a flag leaves several parts of one group
/// and no other part, each of them stays suspect, for no trial can part them; but the group is proven to be tied. Whoever
/// asks what happens when the part is replaced asks <see cref="OfGroup"/>. For a part in no group both are the same.
/// </remarks>
/// <param name="Part">The part.</param>
/// <param name="OfPart">What is concluded about the part itself.</param>
/// <param name="OfGroup">What is concluded about all that is replaced with it: paired when every explanation has some part of the group, cleared when none has any.</param>
public sealed record PartVerdict(Part Part, Conclusion OfPart, Conclusion OfGroup)
{
    /// <summary>The verdict on the part itself.</summary>
    public Verdict Verdict => OfPart.Verdict;

    /// <summary>The worst result seen where a paired part is proven; not observed (<c>default</c>) for every other verdict.</summary>
    public OneOf<SwapResult> Worst => OfPart.Worst;

    /// <summary>Ids of the trials behind the verdict, see <see cref="Conclusion.Because"/>.</summary>
    public ImmutableArray<string> Because => OfPart.Because;
}

/// <summary>A verdict and what it rests on.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Worst">
/// For <see cref="Verdict.Paired"/>: the worst result of the checks that prove it, as a list of what it can be where those
/// results are lists themselves, best first. <c>default</c> for every other verdict.
/// </param>
/// <param name="AtWorst">
/// The worst result that the trials leave possible, from <see cref="SwapResult.Works"/> to <see cref="SwapResult.Refused"/>.
/// For a suspect it is the worst flag that may be its doing, provided that one such trial left nothing untested that may be
/// its doing; else, and when untested, it is <see cref="SwapResult.Refused"/>.
/// </param>
/// <param name="Because">
/// Ids of trials in the order of the record. Paired and cleared: a smallest set that proves it, for paired with the worst
/// result, controls included where a flag was set aside for them; where the search for a smallest set meets its limit of
/// counted work, a set of which no trial can be left out. Suspect: the trials of <paramref name="Flags"/>. Untested: none.
/// </param>
/// <param name="Flags">
/// Checks that were flagged, in the order of the record. Paired: those that nothing else explains. Suspect: those that
/// may be its doing and that no part proven to be paired explains. Else none.
/// </param>
public sealed record Conclusion(
    Verdict Verdict,
    OneOf<SwapResult> Worst,
    SwapResult AtWorst,
    ImmutableArray<string> Because,
    ImmutableArray<FlaggedCheck> Flags);

/// <summary>A check whose result was worse than <see cref="SwapResult.Works"/>.</summary>
/// <param name="Trial">The trial.</param>
/// <param name="Check">The check.</param>
public sealed record FlaggedCheck(SwapTrial Trial, FunctionCheck Check);
