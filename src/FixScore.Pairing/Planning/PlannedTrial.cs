using System.Collections.Immutable;

namespace FixScore.Pairing;

/// <summary>A trial of a plan and what its outcomes mean.</summary>
/// <param name="Foreign">Ids of the candidates that are foreign in it, in the order of the belief; parts known to be tied are at home.</param>
/// <param name="CleanProbability">How probable a clean outcome is.</param>
/// <param name="OnClean">What follows when every function works.</param>
/// <param name="OnFlagged">What follows when a function is worse than that.</param>
public sealed record PlannedTrial(ImmutableArray<string> Foreign, decimal CleanProbability, PlanBranch OnClean, PlanBranch OnFlagged);

/// <summary>What an outcome settles, and what to do next.</summary>
/// <param name="Tied">Ids of candidates that are now known to be tied.</param>
/// <param name="Cleared">Ids of candidates that are now known to be free.</param>
/// <param name="Open">How many candidates are open.</param>
/// <param name="Suspects">Sets of ids of which at least one is known to be tied.</param>
/// <param name="ExpectedTrials">Trials to expect from here on.</param>
/// <param name="Next">The next trial; <c>null</c> when all is settled, or when the tree was cut here.</param>
public sealed record PlanBranch(
    ImmutableArray<string> Tied,
    ImmutableArray<string> Cleared,
    int Open,
    ImmutableArray<ImmutableArray<string>> Suspects,
    decimal ExpectedTrials,
    PlannedTrial? Next)
{
    /// <summary>Whether nothing is open.</summary>
    public bool IsSettled => Open == 0;
}
