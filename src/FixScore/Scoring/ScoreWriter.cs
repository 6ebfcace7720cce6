using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using FixScore.Numbers;

namespace FixScore.Scoring;

/// <summary>Writes score documents as JSON. Members stand in the order of the format; exact values are text.</summary>
static class ScoreWriter
{
    static readonly JsonWriterOptions Indented = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    static readonly JsonWriterOptions OnOneLine = Indented with { Indented = false };

    public static byte[] WithDigest(ScoreDocument score) => [.. Write(score, score.ComputeDigest(), Indented), (byte)'\n'];

    public static byte[] OneLine(ScoreDocument score) => Write(score, score.ComputeDigest(), OnOneLine);

    public static byte[] WithoutDigest(ScoreDocument score) => Write(score, null, default);

    static byte[] Write(ScoreDocument score, string? digest, JsonWriterOptions options)
    {
        var buffer = new ArrayBufferWriter<byte>(32 * 1024);
        using (var json = new Utf8JsonWriter(buffer, options))
        {
            json.WriteStartObject();
            Head(json, score);
            Totals(json, score);
            json.List("nodes", score.Nodes, NodeWriter.Node);
            json.List("faults", score.Faults, Fault);
            json.List("gates", score.Gates, Gate);
            json.List("readings", score.Readings, Reading);
            json.Texts("notes", score.Notes);
            if (digest is not null) json.WriteString("digest", digest);
            json.WriteEndObject();
        }
        return buffer.WrittenSpan.ToArray();
    }

    static void Head(Utf8JsonWriter json, ScoreDocument score)
    {
        json.WriteString("format", ScoreDocument.Format);
        json.Object("record", score.Record, static (json, record) =>
        {
            json.WriteString("id", record.Id);
            json.WriteString("digest", record.Digest);
        });
        json.Object("profile", score, static (json, score) =>
        {
            Reference(json, score.Profile);
            json.List("bases", score.Bases, Reference);
        });
        json.List("plugins", score.Plugins, static (json, plugin) =>
        {
            json.WriteString("id", plugin.Id);
            json.WriteString("version", plugin.Version);
            if (plugin.Digest is not null) json.WriteString("digest", plugin.Digest);
            if (plugin.Dependencies.IsEmpty) return;
            json.List("dependencies", plugin.Dependencies, static (json, dependency) =>
            {
                json.WriteString("file", dependency.File);
                json.WriteString("digest", dependency.Digest);
            });
        });
        json.Object("kernel", score.KernelVersion, static (json, version) => json.WriteString("version", version));
        json.WriteString("mode", Word.Of(score.Mode));
    }

    static void Totals(Utf8JsonWriter json, ScoreDocument score)
    {
        json.WriteString("coverage", PlainText.Of(score.Coverage));
        json.Interval("total", score.Total);
        json.Interval("shown", score.Shown);
        if (score.Class is { } range) json.Class("class", range);
        json.Interval("beforeGates", score.BeforeGates);
    }

    static void Reference(Utf8JsonWriter json, ProfileReference profile)
    {
        json.WriteString("id", profile.Id);
        json.WriteString("version", profile.Version);
        json.WriteString("digest", profile.Digest);
    }

    static void Fault(Utf8JsonWriter json, ScoreFault fault)
    {
        json.WriteString("node", fault.Node);
        json.WriteString("code", fault.Code);
        json.Values("values", [new("criterion", fault.Criterion), new("plugin", fault.Plugin), .. fault.Values]);
    }

    static void Gate(Utf8JsonWriter json, ScoreGate gate)
    {
        json.WriteString("id", gate.Id);
        json.WriteString("cap", PlainText.Of(gate.Cap));
        json.WriteString("reason", gate.Reason);
        json.WriteString("ends", Word.Of(gate.Ends));
    }

    static void Reading(Utf8JsonWriter json, ScoreReading reading)
    {
        json.WriteString("id", reading.Id);
        json.WriteString("point", reading.Point);
        json.WriteString("taken", reading.Taken);
        json.List("otherwise", reading.Otherwise, static (json, other) =>
        {
            json.WriteString("text", other.Text);
            json.Interval("total", other.Total);
            if (other.Class is { } range) json.Class("class", range);
        });
        json.WriteBoolean("decisive", reading.Decisive);
    }
}
