using System.Collections.Immutable;

namespace FixScore;

/// <summary>Rules for a score, bound to installed criteria: which criteria count, how they are added up, what caps the total.</summary>
/// <remarks>Format <c>fixscore-profile/1</c>, bases merged in. Immutable and thread safe.</remarks>
public sealed record Profile
{
    /// <summary>The value of the member <c>format</c>.</summary>
    public const string Format = "fixscore-profile/1";

    /// <summary>The id.</summary>
    public required string Id { get; init; }

    /// <summary>The version, a semantic version.</summary>
    public required string Version { get; init; }

    /// <summary>The name people read.</summary>
    public required string Title { get; init; }

    /// <summary>Whose rules these are.</summary>
    public required ProfileStatus Status { get; init; }

    /// <summary>Where the rules come from; <c>null</c> when they are the author's own.</summary>
    public ProfileSource? Source { get; init; }

    /// <summary>Why the rules are as they are.</summary>
    public string? Note { get; init; }

    /// <summary>Text shown with every result.</summary>
    public ImmutableArray<string> Notices { get; init; } = [];

    /// <summary>Which devices the rules are for; <c>null</c> for all.</summary>
    public AppliesTo? AppliesTo { get; init; }

    /// <summary>The scale of the total.</summary>
    public required ProfileScale Scale { get; init; }

    /// <summary>Named sets of roles.</summary>
    public ImmutableArray<PartSet> PartSets { get; init; } = [];

    /// <summary>The root of the tree.</summary>
    public required ProfileNode Root { get; init; }

    /// <summary>Limits that cap the total.</summary>
    public ImmutableArray<Gate> Gates { get; init; } = [];

    /// <summary>Classes, highest first; empty when the profile has none.</summary>
    public ImmutableArray<ScoreClass> Classes { get; init; } = [];

    /// <summary>Which value decides the class.</summary>
    public ClassBasis ClassesOn { get; init; }

    /// <summary>Points on which the source is silent.</summary>
    public ImmutableArray<SourceReading> Readings { get; init; } = [];

    /// <summary>Digest of the resolved profile.</summary>
    public required string Digest { get; init; }

    /// <summary>The profiles this one extends, nearest first.</summary>
    public ImmutableArray<ProfileReference> Bases { get; init; } = [];

    /// <summary>All nodes, depth first.</summary>
    public IEnumerable<ProfileNode> Nodes => Root.SelfAndBelow();
}

/// <summary>Whose rules a profile holds.</summary>
public enum ProfileStatus
{
    /// <summary>A law's.</summary>
    Law,

    /// <summary>The author's own.</summary>
    Own,

    /// <summary>Unfinished: not to be published as a result.</summary>
    Draft,
}

/// <summary>Where rules come from.</summary>
/// <param name="Title">Title of the source.</param>
/// <param name="Locator">Where to find it.</param>
/// <param name="Date">Its date.</param>
public sealed record ProfileSource(string Title, string Locator, DateOnly? Date);

/// <summary>Which devices a profile is for.</summary>
/// <param name="Kinds">Kinds of device; empty for all.</param>
/// <param name="Foldable">Whether only foldable or only other devices; <c>null</c> for both.</param>
public sealed record AppliesTo(ImmutableArray<string> Kinds, bool? Foldable);

/// <summary>The scale of a total and how it is shown.</summary>
/// <param name="Min">Points of the worst result.</param>
/// <param name="Max">Points of the best result.</param>
/// <param name="Decimals">Decimals shown.</param>
/// <param name="Rounding">How it is rounded when shown.</param>
public sealed record ProfileScale(decimal Min, decimal Max, int Decimals, RoundingMode Rounding)
{
    /// <summary>The scale without how it is shown.</summary>
    public Scale Points => new(Min, Max);
}

/// <summary>A named set of roles with their weights.</summary>
/// <param name="Name">The name.</param>
/// <param name="Roles">Roles and weights, in the order of the profile.</param>
public sealed record PartSet(string Name, ImmutableArray<KeyValuePair<string, decimal>> Roles);

/// <summary>Names a version of a profile.</summary>
/// <param name="Id">The id.</param>
/// <param name="Version">The version.</param>
/// <param name="Digest">Digest of the resolved profile.</param>
public sealed record ProfileReference(string Id, string Version, string Digest);
