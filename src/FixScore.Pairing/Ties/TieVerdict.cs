using System.Collections.Immutable;

namespace FixScore.Pairing.Ties;

/// <summary>The verdict on a tie in one context.</summary>
/// <remarks>
/// Parts of one group (<see cref="PartGroups"/>) always come from one unit, so that no trial breaks a tie inside a group and
/// none is listed. Where a flag leaves several ties between the same two groups and no other, each stays suspect, but that
/// the groups are tied is proven. For parts in no group both conclusions are the same.
/// </remarks>
/// <param name="Tie">The tie.</param>
/// <param name="OfTie">What is concluded about the tie itself; read "tied" for <see cref="Verdict.Paired"/>, "excluded" for <see cref="Verdict.Cleared"/>.</param>
/// <param name="OfGroups">What is concluded about all ties between the groups of its ends, or between a group and the main board.</param>
public sealed record TieVerdict(Tie Tie, Conclusion OfTie, Conclusion OfGroups)
{
    /// <summary>The verdict on the tie itself.</summary>
    public Verdict Verdict => OfTie.Verdict;

    /// <summary>Ids of the trials behind the verdict, see <see cref="Conclusion.Because"/>.</summary>
    public ImmutableArray<string> Because => OfTie.Because;
}
