using System.Collections.Immutable;
using FixScore.Analysis.Comparing;

namespace FixScore.Analysis.Assessors;

/// <summary>How far several assessors of one device agree, in points and in what they recorded.</summary>
/// <remarks>Immutable and thread safe.</remarks>
/// <param name="Records">Ids of the records, one for each assessor.</param>
/// <param name="Totals">The exact totals.</param>
/// <param name="Lines">The lowest lines of the scores that a criterion made, ordinal by path.</param>
/// <param name="Disagreements">What the records say differently.</param>
public sealed record AssessorComparison(
    ImmutableArray<string> Records, ImmutableArray<Interval> Totals, ImmutableArray<AssessorLine> Lines, ImmutableArray<Disagreement> Disagreements)
{
    /// <summary>Scores records of one device by a profile and compares them.</summary>
    /// <param name="records">A record by each assessor, two at least. That they are of one device is the caller's to know.</param>
    /// <param name="profile">The profile.</param>
    /// <param name="mode">What happens when a criterion fails.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="ArgumentException">There are fewer than two records.</exception>
    /// <inheritdoc cref="ProfileScores.Of" path="/exception"/>
    public static AssessorComparison Of(
        ImmutableArray<RecordDocument> records, Profile profile, ScoringMode mode = ScoringMode.Strict, CancellationToken cancellation = default)
    {
        if (records.Length < 2) throw new ArgumentException("Agreement needs two assessors.", nameof(records));
        var scores = ProfileScores.Of(records, profile, mode, cancellation);
        return new(scores.Devices, scores.Totals, AssessorLines.Of(scores), RecordDisagreements.Between([.. records.Select(record => record.Record)]));
    }

    /// <summary>Agreement over all lines; open values are missing ones. Values are shares of their scales: differences compare.</summary>
    public KrippendorffAlpha Alpha => KrippendorffAlpha.Of(
        [.. Records.Select((_, assessor) => Lines.Select(line => line.Exact(assessor)).ToImmutableArray())], MeasurementLevel.Interval);

    /// <summary>The same as intraclass correlation, over the lines that all assessors made exact; <c>null</c> for fewer than two.</summary>
    public IntraclassCorrelation? Intraclass
    {
        get
        {
            ImmutableArray<ImmutableArray<decimal>> ratings =
                [.. Lines.Where(line => line.IsComplete).Select(line => line.Values.Select(value => value!.Value.Low).ToImmutableArray())];
            return ratings.Length < 2 ? null : IntraclassCorrelation.Of(ratings);
        }
    }
}

/// <summary>One line of the scores, assessor by assessor.</summary>
/// <param name="Path">Path of the line.</param>
/// <param name="Criterion">Id of the criterion.</param>
/// <param name="Values">For each assessor the value as share of its scale, 0 to 1, more is better; <c>null</c> where the line is missing or was left out.</param>
public sealed record AssessorLine(string Path, string Criterion, ImmutableArray<Interval?> Values)
{
    /// <summary>Whether all assessors come to the same value.</summary>
    public bool Agrees => Values.All(value => value == Values[0]);

    /// <summary>Whether all assessors come to an exact value.</summary>
    public bool IsComplete => Values.All(value => value is { IsExact: true });

    internal decimal? Exact(int assessor) => Values[assessor] is { IsExact: true } value ? value.Low : null;
}
