using System.Collections.Immutable;

namespace FixScore;

/// <summary>What a criterion says of itself.</summary>
/// <param name="Id">Names the criterion in profiles, a slug; criteria of others begin with a vendor and a dot.</param>
/// <param name="RuleVersion">Raised whenever the same record and options may give another outcome or other reasons; from 1.</param>
/// <param name="Title">The name people read.</param>
/// <param name="Measures">What is measured, in a phrase.</param>
/// <param name="Unit">Unit of what is measured, such as <c>N</c> or <c>share</c>.</param>
/// <param name="Direction">Whether more of what is measured is better.</param>
/// <param name="Source">The law, standard or paper behind the rule; or "own judgement, no source".</param>
/// <param name="Reads">Record members looked at, such as <c>joints[].screw</c>: for templates, coverage and the conformance kit.</param>
/// <param name="Options">The options a profile can set.</param>
public sealed record CriterionInfo(
    string Id,
    int RuleVersion,
    string Title,
    string Measures,
    string Unit,
    Direction Direction,
    string Source,
    ImmutableArray<string> Reads,
    ImmutableArray<Option> Options);

/// <summary>Whether more of what a criterion measures is better. Points are always better when more.</summary>
public enum Direction
{
    /// <summary>More is better.</summary>
    MoreIsBetter,

    /// <summary>Less is better.</summary>
    LessIsBetter,
}
