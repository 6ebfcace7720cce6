using System.Collections.Immutable;

namespace FixScore.Analysis.Comparing;

/// <summary>The scores of several devices by one profile.</summary>
/// <remarks>Immutable and thread safe.</remarks>
/// <param name="Profile">The profile.</param>
/// <param name="Scores">A score document for each device, made by this profile.</param>
public sealed record ProfileScores(Profile Profile, ImmutableArray<ScoreDocument> Scores)
{
    /// <summary>Scores records.</summary>
    /// <param name="records">A record for each device.</param>
    /// <param name="profile">The profile.</param>
    /// <param name="mode">What happens when a criterion fails.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="ProfileMismatchException">The profile is not for one of the devices.</exception>
    /// <exception cref="CriterionFaultException">A criterion failed and <paramref name="mode"/> is strict.</exception>
    public static ProfileScores Of(
        ImmutableArray<RecordDocument> records, Profile profile, ScoringMode mode = ScoringMode.Strict, CancellationToken cancellation = default) =>
        new(profile, [.. records.Select(record => Scorer.Score(record, profile, mode, cancellation))]);

    /// <summary>Ids of the records, in order.</summary>
    internal ImmutableArray<string> Devices => [.. Scores.Select(score => score.Record.Id)];

    /// <summary>The exact totals.</summary>
    internal ImmutableArray<Interval> Totals => [.. Scores.Select(score => score.Total)];
}
