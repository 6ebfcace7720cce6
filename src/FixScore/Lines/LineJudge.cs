using System.Collections.Immutable;

namespace FixScore.Lines;

/// <summary>Scores one line; whatever stands in the way becomes problems of that line. Thread safe.</summary>
sealed class LineJudge(Profile profile, Catalogue? catalogue, ScoringMode mode, CancellationToken cancellation)
{
    public ScoredLine Score(TextLine line)
    {
        try
        {
            RecordCase? source = null;
            var read = RecordFile.Read(line.Text, catalogue, record => source = new(record, cancellation));
            if (!read.IsValid) return new(line.Number, null, read.Problems, false);
            if (ProfileMismatchException.For(read.Value.Record.Device, profile) is { } mismatch) return Bad(line, mismatch.Problem, false);
            return new(line.Number, Scorer.ScoreCase(read.Value, source ?? new(read.Value.Record, cancellation), profile, mode, cancellation), [], false);
        }
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            return Bad(line, Failed(failure), true);
        }
    }

    static ScoredLine Bad(TextLine line, Problem problem, bool failed) => new(line.Number, null, [new(problem, 1, 1)], failed);

    // What throws here is a plugin's criterion or check: kernel and readers throw nothing on bad input.
    static Problem Failed(Exception failure) => Problem.Of(
        Severity.Error, Pointer.Root, "plugin-failed", $"A criterion or a check failed: {failure.Message}",
        "Tell its author; a tolerant run counts a failed criterion as the whole scale.");
}
