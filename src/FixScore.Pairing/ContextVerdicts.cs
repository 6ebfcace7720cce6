using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>What the swap trials of one context prove.</summary>
/// <param name="Context">The context.</param>
/// <param name="Trials">Its trials, controls included, in the order of the record.</param>
/// <param name="Contradictions">
/// When no set of parts explains the trials: the smallest sets of trials that cannot all be right, all of one size, each as
/// ids in the order of the record; empty when the context is consistent.
/// </param>
/// <param name="AllContradictionsListed">
/// Whether all smallest sets are listed. <c>false</c> after 100 sets, or when the search met its limit of counted work: then
/// the sets are smallest ones among others, or a single set of which no trial can be left out but which may not be smallest.
/// </param>
/// <param name="Parts">
/// A verdict for every part but those of the main board's group, in the order of the record. An inert part is never foreign,
/// hence untested. In a contradictory context the verdicts mean nothing: what was foreign is a suspect, without reasons.
/// </param>
public sealed record ContextVerdicts(
    SwapContext Context,
    ImmutableArray<SwapTrial> Trials,
    ImmutableArray<ImmutableArray<string>> Contradictions,
    bool AllContradictionsListed,
    ImmutableArray<PartVerdict> Parts)
{
    /// <summary>Whether some set of parts explains all trials of the context.</summary>
    public bool IsConsistent => Contradictions.IsEmpty;

    /// <summary>The verdict on a part; <c>null</c> for parts of the main board's group and ids that the record lacks.</summary>
    public PartVerdict? Of(string partId) => Parts.FirstOrDefault(verdict => verdict.Part.Id == partId);
}
