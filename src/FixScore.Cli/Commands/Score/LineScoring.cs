using System.Collections.Immutable;
using System.Globalization;
using FixScore.Cli.Files;
using FixScore.Reporting.Tables;

namespace FixScore.Cli.Commands.Score;

/// <summary><c>score - --ndjson</c>: records as lines in, score documents as lines or a Parquet table out; what cannot be scored is told and the rest goes on.</summary>
sealed class LineScoring(CommandSession session, Profile profile, ScoringMode mode)
{
    const int RowsInGroup = 100_000;

    readonly Terminal.Counter counter = new(session, "records scored");
    long lines, bad, firstBad;
    bool failed;

    public int Run(string path, string? output)
    {
        using (var input = session.Open(path))
        {
            if (output is not null && output.EndsWith(".parquet", StringComparison.Ordinal)) OutputFile.Write(output, stream => Table(input, stream));
            else if (output is not null) OutputFile.Write(output, stream => Documents(input, bytes => stream.Write(bytes)));
            else Documents(input, bytes => session.Write(null, bytes));
        }
        counter.End();
        Tell(output);
        return failed ? ExitCode.PluginFailed : bad > 0 ? ExitCode.InvalidInput : ExitCode.Done;
    }

    void Documents(Stream input, Action<byte[]> write)
    {
        foreach (var (line, json) in RecordLines.Score(input, profile, line => (Outcome(line), line.ToJson()), session.Catalogue, mode, cancellation: session.Cancellation))
        {
            Count(line);
            write(json);
        }
    }

    void Table(Stream input, Stream output)
    {
        using var form = new ParquetForm(LineTable.Columns, output);
        var rows = new List<ImmutableArray<Cell>>(RowsInGroup);
        foreach (var (line, more) in RecordLines.Score(input, profile, line => (Outcome(line), LineTable.Rows(line, profile)), session.Catalogue, mode, cancellation: session.Cancellation))
        {
            Count(line);
            rows.AddRange(more);
            if (rows.Count < RowsInGroup) continue;
            form.Write(rows);
            rows.Clear();
        }
        if (rows.Count > 0) form.Write(rows);
    }

    static (long Number, bool Bad, bool Failed) Outcome(ScoredLine line) => (line.Number, line.Score is null, line.HasFailure);

    void Count((long Number, bool Bad, bool Failed) line)
    {
        counter.Show(++lines);
        failed |= line.Failed;
        if (line.Bad && bad++ == 0) firstBad = line.Number;
    }

    void Tell(string? output)
    {
        if (bad > 0) session.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{bad} of {lines} records could not be scored; the first is line {firstBad}. Each has its problems in its place."));
        if (output is not null) session.Canvas.Line(string.Create(CultureInfo.InvariantCulture, $"{lines - bad} scores written to {output}."));
    }
}
