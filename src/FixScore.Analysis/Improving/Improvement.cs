using System.Collections.Immutable;

namespace FixScore.Analysis.Improving;

/// <summary>Which smallest sets of design changes lift a device to a target, and what each number of changes can reach.</summary>
/// <remarks>
/// <para>Every set is scored by the kernel on the record with all its patches applied, routes and all. What is found is a
/// what-if about a changed design, never a finding about the device that was taken apart.</para>
/// <para>Sets are tried by rising size. A criterion is asked again only when a change touches a member that it
/// says it reads (<see cref="CriterionInfo.Reads"/>); that sets are smallest is proven under this. Sizes are shared out among groups
/// of changes that no criterion reads together, and a share is passed over when even the best of each score on its own,
/// put together, stays below what is asked. Sets named in the answer are scored once more as a whole; where that differs, the
/// search begins again and asks every criterion each time.
/// Work is counted, never timed: the same input gives the same answer everywhere. Immutable and thread safe.</para>
/// </remarks>
public sealed record Improvement
{
    /// <summary>How much work a search may take unless told otherwise, in scorings and what takes as long.</summary>
    public const int UsualEffort = 50_000;

    /// <summary>What was asked for.</summary>
    public required Target Target { get; init; }

    /// <summary>The total of the record as it is.</summary>
    public required ScoreTotal Now { get; init; }

    /// <summary>
    /// All smallest sets that reach the target, best low end first; one without changes when it is reached already. Where the
    /// effort did not suffice, those found until then, or one put together step by step; empty when none was found.
    /// </summary>
    public required ImmutableArray<ImprovementSet> Sets { get; init; }

    /// <summary>Whether the search came to its end: the sets are smallest and all, or no set of the candidates reaches the target. Never with more than 128 candidates: only the first 128 are tried.</summary>
    public required bool IsOptimal { get; init; }

    /// <summary>No set with fewer changes than this reaches the target; <c>null</c> when no set at all does.</summary>
    public required int? LowerBound { get; init; }

    /// <summary>The best that each number of changes reaches, measured by the low end, as far as the search went; a number that brings nothing more is left out.</summary>
    public required ImmutableArray<ImprovementSet> Front { get; init; }

    /// <summary>The changes that were tried, in the order of the profile's criteria.</summary>
    public required ImmutableArray<CandidateChange> Candidates { get; init; }

    /// <summary>Suggestions that could not be tried, because their patch does not apply or leaves an invalid record: faults of their criterion.</summary>
    public required ImmutableArray<string> Unusable { get; init; }

    /// <summary>Ids of the profile's criteria for which no change is known, in the order of the profile.</summary>
    public required ImmutableArray<string> WithoutChanges { get; init; }

    /// <summary>How many sets were scored.</summary>
    public required int Tried { get; init; }

    /// <summary>Whether a set reaches the target.</summary>
    public bool IsReached => !Sets.IsEmpty;

    /// <summary>Searches among the changes that the profile's criteria suggest (<see cref="IDesignAdvisor"/>).</summary>
    /// <param name="document">The record.</param>
    /// <param name="profile">The rules.</param>
    /// <param name="target">What is to be reached.</param>
    /// <param name="effort">The most work, in scorings and what takes as long; beyond it the answer is what was found until then, and half as much again goes into putting a set together step by step.</param>
    /// <param name="cancellation">Cancels the search.</param>
    /// <exception cref="ProfileMismatchException">The profile is not for such a device.</exception>
    /// <exception cref="CriterionFaultException">A criterion failed.</exception>
    public static Improvement Search(
        RecordDocument document, Profile profile, Target target, int effort = UsualEffort, CancellationToken cancellation = default)
    {
        var found = Suggestions.Of(document.Record, profile, cancellation);
        Improvement? Run(bool trustsReads) =>
            new SmallestSets(new(document.Record, profile, found.Candidates, effort, trustsReads, cancellation), profile, target).Run(found);
        return (found.AreRead ? Run(trustsReads: true) : null) ?? Run(trustsReads: false) ?? throw new InvalidOperationException("A criterion judges the same record in two ways.");
    }
}

/// <summary>Changes made together, and what they lead to.</summary>
/// <param name="Changes">The changes, in the order of the candidates.</param>
/// <param name="Total">The total with all of them.</param>
public sealed record ImprovementSet(ImmutableArray<CandidateChange> Changes, ScoreTotal Total);

/// <summary>A change that criteria of the profile suggest.</summary>
/// <param name="Id">Id of the first criterion that suggests it, a slash, and its id there.</param>
/// <param name="Change">The change.</param>
public sealed record CandidateChange(string Id, DesignChange Change);
