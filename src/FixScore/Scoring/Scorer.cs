using System.Collections.Immutable;
using FixScore.Records;
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
    /// <summary>Version of the kernel, without build metadata, as score documents name it.</summary>
    public static string KernelVersion => DocumentBuilder.Kernel;

    /// <summary>Scores a record.</summary>
    /// <param name="document">The record.</param>
    /// <param name="profile">The rules.</param>
    /// <param name="mode">What happens when a criterion fails.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="ProfileMismatchException">The profile is not for such a device.</exception>
    /// <exception cref="CriterionFaultException">A criterion failed and <paramref name="mode"/> is <see cref="ScoringMode.Strict"/>; names all that did.</exception>
    public static ScoreDocument Score(
        RecordDocument document, Profile profile, ScoringMode mode = ScoringMode.Strict, CancellationToken cancellation = default) =>
        ScoreCase(document, new RecordCase(document.Record, cancellation), profile, mode, cancellation);

    /// <summary>The same with what was derived from the record before.</summary>
    internal static ScoreDocument ScoreCase(RecordDocument document, TeardownCase source, Profile profile, ScoringMode mode, CancellationToken cancellation)
    {
        if (ProfileMismatchException.For(document.Record.Device, profile) is { } mismatch) throw mismatch;
        var evaluation = new Evaluation(profile, source, cancellation);
        var result = new Result(profile, evaluation.Run());
        var readings = ReadingsOf(profile, source, result, cancellation);
        if (mode == ScoringMode.Strict && evaluation.Faults.Count > 0) throw new CriterionFaultException([.. evaluation.Faults]);
        return new DocumentBuilder(document, profile, mode, result).Build([.. evaluation.Faults], readings);
    }

    /// <summary>The total alone, without a document: for searches that score a device many times. Readings are not tried.</summary>
    /// <param name="record">The record.</param>
    /// <param name="profile">The rules.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="ProfileMismatchException">The profile is not for such a device.</exception>
    /// <exception cref="CriterionFaultException">A criterion failed; names all that did.</exception>
    public static ScoreTotal Total(TeardownRecord record, Profile profile, CancellationToken cancellation = default)
    {
        if (ProfileMismatchException.For(record.Device, profile) is { } mismatch) throw mismatch;
        var evaluation = new Evaluation(profile, new RecordCase(record, cancellation), cancellation);
        var result = new Result(profile, evaluation.Run());
        return evaluation.Faults.Count > 0 ? throw new CriterionFaultException([.. evaluation.Faults]) : new(result.Total, result.Shown, result.Class);
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

/// <summary>A total without what explains it.</summary>
/// <param name="Total">The total.</param>
/// <param name="Shown">The same rounded as the profile shows it.</param>
/// <param name="Class">Classes of both ends; <c>null</c> when the profile has none.</param>
public sealed record ScoreTotal(Interval Total, Interval Shown, ClassRange? Class);
