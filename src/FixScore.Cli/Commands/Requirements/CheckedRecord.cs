using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Cli.Commands.Requirements;

/// <summary>A record and what sets of requirements find in it.</summary>
/// <param name="Record">The record.</param>
/// <param name="Date">The day that was asked about.</param>
/// <param name="Sets">The sets, each with its findings.</param>
sealed record CheckedRecord(TeardownRecord Record, DateOnly Date, ImmutableArray<CheckedSet> Sets)
{
    public bool HasNotMet => Sets.Any(set => set.Findings.Any(finding => finding.Status == FindingStatus.NotMet));
}

/// <summary>A set of requirements and its findings.</summary>
/// <param name="Info">What the set says of itself.</param>
/// <param name="Findings">The findings, in the order of the set.</param>
sealed record CheckedSet(RequirementInfo Info, ImmutableArray<Finding> Findings);
