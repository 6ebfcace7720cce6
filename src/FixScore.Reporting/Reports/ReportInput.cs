using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Generations;
using FixScore.Analysis.Uncertainty;
using FixScore.Records;

namespace FixScore.Reporting.Reports;

/// <summary>All that a report tells. Immutable and thread safe.</summary>
/// <remarks>What is empty or <c>null</c> is left out of the report. <see cref="ReportInputs"/> makes all of it from records and profiles.</remarks>
public sealed record ReportInput
{
    /// <summary>The heading; <c>null</c> for one made of the devices' names.</summary>
    public string? Title { get; init; }

    /// <summary>A sentence or two below it.</summary>
    public string Introduction { get; init; } = "";

    /// <summary>The scores, one at least: every record by every profile, profile after profile. The first profile decides the order and the headline.</summary>
    public required ImmutableArray<Judgement> Judgements { get; init; }

    /// <summary>Findings against legal requirements, set after set.</summary>
    public ImmutableArray<CheckedRequirements> Requirements { get; init; } = [];

    /// <summary>How the ranking depends on the profile.</summary>
    public ProfileComparison? Comparison { get; init; }

    /// <summary>How it depends on weights.</summary>
    public ImmutableArray<WeightStudy> Studies { get; init; } = [];

    /// <summary>How the draws behind <see cref="Studies"/> and <see cref="Spreads"/> were made; <c>null</c> without draws.</summary>
    public DrawsMade? Draws { get; init; }

    /// <summary>How far each score can be off.</summary>
    public ImmutableArray<ScoreSpread> Spreads { get; init; } = [];

    /// <summary>Last year's models against this year's.</summary>
    public ImmutableArray<Generation> Generations { get; init; } = [];

    /// <summary>The command that makes the report again; <c>null</c> when there is none.</summary>
    public string? Command { get; init; }
}

/// <summary>Findings on one record by one set of legal requirements. A screening aid, never legal advice.</summary>
/// <param name="Record">Id of the record.</param>
/// <param name="Date">The day for which the law was asked.</param>
/// <param name="Set">The set.</param>
/// <param name="Findings">What it found.</param>
public sealed record CheckedRequirements(string Record, DateOnly Date, RequirementInfo Set, ImmutableArray<Finding> Findings);

/// <summary>How far one score can be off.</summary>
/// <param name="Judgement">The score.</param>
/// <param name="Uncertainty">How far.</param>
public sealed record ScoreSpread(Judgement Judgement, ScoreUncertainty Uncertainty);

/// <summary>Two generations of a device.</summary>
/// <param name="Old">The old record.</param>
/// <param name="New">The new record.</param>
/// <param name="Profile">The rules.</param>
/// <param name="Attribution">What each line of the score did to the difference.</param>
public sealed record Generation(TeardownRecord Old, TeardownRecord New, Profile Profile, ScoreAttribution Attribution);

/// <summary>How draws were made.</summary>
/// <param name="Spread">Which other weights were drawn.</param>
/// <param name="Count">How many sets of weights.</param>
/// <param name="Seed">The seed.</param>
public sealed record DrawsMade(WeightSpread Spread, int Count, long Seed);
