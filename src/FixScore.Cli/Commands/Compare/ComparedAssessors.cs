using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using FixScore.Analysis.Assessors;
using FixScore.Cli.Files;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Compare;

/// <summary><c>compare --assessors</c>: records of one device by several assessors, scored by one profile: how far they agree, and on what not.</summary>
sealed class ComparedAssessors(CommandSession session)
{
    const int MostDisagreements = 30;

    public int Run(string[] paths, string[] profileNames)
    {
        if (paths.Length < 2) throw new UsageException("Agreement needs two records at least.");
        if (profileNames is not [var name]) throw new UsageException("--assessors takes one --profile.");
        var profile = session.ReadProfile(name);
        var read = paths.Select(path => (Path: path, Document: session.ReadRecord(path))).ToArray();
        if (profile is null || read.Any(record => record.Document is null)) return ExitCode.InvalidInput;
        if (read.Count(record => !session.Fits(record.Path, record.Document!, profile)) > 0) return ExitCode.InvalidInput;
        ImmutableArray<RecordDocument> documents = [.. read.Select(record => record.Document!)];
        var found = AssessorComparison.Of(documents, profile, cancellation: session.Cancellation);
        if (session.AsJson) session.Write(null, JsonOutput.Write(json => Write(json, documents, found)));
        else Show(documents, found);
        return found.Disagreements.IsEmpty ? ExitCode.Done : ExitCode.Difference;
    }

    void Show(ImmutableArray<RecordDocument> documents, AssessorComparison found)
    {
        var (canvas, shown) = (session.Canvas, new Shown(session.Culture));
        canvas.Heading("Assessors of one device");
        canvas.Table([("Record", false), ("Assessor", false), ("Total", true)],
            documents.Zip(found.Totals).Select(each => (string[])[each.First.Record.Id, each.First.Record.Assessment.Assessor, shown.Points(new Interval(decimal.Round(each.Second.Low, 2), decimal.Round(each.Second.High, 2)))]));
        canvas.Line($"Krippendorff's alpha over {Number(found.Lines.Length)} lines, as intervals: {Coefficient(found.Alpha.Alpha)}. 1 is full agreement, 0 that of chance.");
        if (found.Intraclass?.TwoWayRandom is { } icc) canvas.Line($"Intraclass correlation, two-way random, of one assessor: {Coefficient(icc.Value)} (95 % limits {Coefficient(icc.Low)} to {Coefficient(icc.High)}).");
        canvas.Line();
        canvas.Heading(found.Disagreements.IsEmpty ? "The records say the same of the device" : "What the records say differently");
        foreach (var each in found.Disagreements.Take(MostDisagreements))
            canvas.Item(1, each.IsSilence ? "?" : "-", $"{each.Path.Text}: {string.Join("; ", each.Values.Select((value, i) => $"{documents[i].Record.Id} {value ?? "not recorded"}"))}");
        if (found.Disagreements.Length > MostDisagreements) canvas.Item(1, "", $"and {Number(found.Disagreements.Length - MostDisagreements)} more; --json lists all.", quiet: true);
    }

    string Number(int count) => count.ToString(session.Culture);

    string Coefficient(double? value) => value is { } known ? known.ToString("0.000", session.Culture) : "undefined";

    static void Write(Utf8JsonWriter json, ImmutableArray<RecordDocument> documents, AssessorComparison found)
    {
        json.WriteStartObject();
        json.Words("records", found.Records);
        Value(json, "alpha", found.Alpha.Alpha);
        Value(json, "icc", found.Intraclass?.TwoWayRandom?.Value);
        json.WriteStartArray("lines");
        foreach (var line in found.Lines.Where(line => !line.Agrees))
        {
            json.WriteStartObject();
            json.WriteString("path", line.Path);
            json.WriteString("criterion", line.Criterion);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("disagreements");
        foreach (var each in found.Disagreements) Disagreement(json, each);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    static void Disagreement(Utf8JsonWriter json, Disagreement each)
    {
        json.WriteStartObject();
        json.WriteString("path", each.Path.Text);
        json.WriteStartArray("pointers");
        foreach (var at in each.At) json.WriteStringValue(at?.Text);
        json.WriteEndArray();
        json.WriteStartArray("values");
        foreach (var value in each.Values) json.WriteRawValue(value ?? "null");
        json.WriteEndArray();
        json.WriteBoolean("silence", each.IsSilence);
        json.WriteEndObject();
    }

    static void Value(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } known) json.WriteNumber(name, known);
        else json.WriteNull(name);
    }
}
