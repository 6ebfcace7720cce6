using System.Collections.Immutable;
using FixScore.Scoring;

namespace FixScore;

/// <summary>What happens when a criterion fails.</summary>
public enum ScoringMode
{
    /// <summary>There is no score; the failure is named.</summary>
    Strict,

    /// <summary>The leaf counts as the whole scale; the failure is named in the score document.</summary>
    Tolerant,
}

/// <summary>Judges a record by a profile. Thread safe; the same input gives the same score, everywhere.</summary>
public static class Scorer
{
    /// <summary>Scores a record.</summary>
    /// <param name="document">The record.</param>
    /// <param name="profile">The rules.</param>
    /// <param name="mode">What happens when a criterion fails.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="ProfileMismatchException">The profile is not for such a device.</exception>
    /// <exception cref="CriterionFaultException">A criterion failed and <paramref name="mode"/> is <see cref="ScoringMode.Strict"/>; names all that did.</exception>
    public static ScoreDocument Score(
        RecordDocument document, Profile profile, ScoringMode mode = ScoringMode.Strict, CancellationToken cancellation = default)
    {
        if (ProfileMismatchException.For(document.Record.Device, profile) is { } mismatch) throw mismatch;
        var source = new RecordCase(document.Record, cancellation);
        var evaluation = new Evaluation(profile, source, cancellation);
        var result = new Result(profile, evaluation.Run());
        var readings = ReadingsOf(profile, source, result, cancellation);
        if (mode == ScoringMode.Strict && evaluation.Faults.Count > 0) throw new CriterionFaultException([.. evaluation.Faults]);
        return new DocumentBuilder(document, profile, mode, result).Build([.. evaluation.Faults], readings);
    }

    static ImmutableArray<ScoreReading> ReadingsOf(Profile profile, TeardownCase source, Result taken, CancellationToken cancellation) =>
        [.. profile.Readings.Select(reading =>
        {
            var others = reading.Otherwise.Select(other => (other.Text, Result: new Result(other.Profile, new Evaluation(other.Profile, source, cancellation).Run()))).ToArray();
            return new ScoreReading(reading.Id, reading.Point, reading.Taken,
                [.. others.Select(other => new ScoreOtherwise(other.Text, other.Result.Total, other.Result.Class))],
                others.Any(other => !other.Result.LooksLike(taken)));
        })];
}
