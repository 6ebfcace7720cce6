using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Analysis.Generations;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Diff;

/// <summary>Differences as JSON.</summary>
static class DiffJson
{
    public static byte[] Of(Difference found) => JsonOutput.Write(json =>
    {
        json.WriteStartObject();
        json.WriteStartArray("changes");
        foreach (var change in found.Changes) Change(json, change);
        json.WriteEndArray();
        if (found.Attribution is { } attribution) Score(json, attribution);
        else json.WriteNull("score");
        json.WriteStartArray("proofs");
        foreach (var proof in found.Proofs) Proof(json, proof);
        json.WriteEndArray();
        json.WriteEndObject();
    });

    static void Change(Utf8JsonWriter json, RecordChange change)
    {
        json.WriteStartObject();
        json.WriteString("kind", Word.Of(change.Kind));
        json.WriteString("pointer", change.At.Text);
        json.WriteString("text", change.Text);
        Value(json, "old", change.Old);
        Value(json, "new", change.New);
        json.WriteString("path", change.Path.Text);
        json.WriteString("was", change.Was);
        json.WriteEndObject();
    }

    static void Proof(Utf8JsonWriter json, ProofChange change)
    {
        json.WriteStartObject();
        json.WriteString("part", change.Part);
        json.WriteString("lockState", change.LockState is { } state ? Word.Of(state) : null);
        json.WriteString("procedure", change.Procedure is { } procedure ? Word.Of(procedure) : null);
        Proofs(json, "old", change.Old);
        Proofs(json, "new", change.New);
        json.WriteEndObject();
    }

    static void Proofs(Utf8JsonWriter json, string name, ImmutableArray<PartProof> proofs)
    {
        json.WriteStartArray(name);
        foreach (var proof in proofs)
        {
            json.WriteStartObject();
            json.WriteString("verdict", Word.Of(proof.Verdict));
            json.WriteString("worst", proof.Worst.Length > 0 ? proof.Worst : null);
            json.WriteString("software", proof.Software);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    static void Value(Utf8JsonWriter json, string name, string? canonical)
    {
        json.WritePropertyName(name);
        if (canonical is null) json.WriteNullValue();
        else json.WriteRawValue(canonical);
    }

    static void Score(Utf8JsonWriter json, ScoreAttribution attribution)
    {
        json.WriteStartObject("score");
        Ends(json, "old", attribution.Old.Low, attribution.Old.High);
        Ends(json, "new", attribution.New.Low, attribution.New.High);
        json.WriteStartArray("attribution");
        foreach (var delta in attribution.Deltas)
        {
            json.WriteStartObject();
            json.WriteString("node", delta.Node);
            Ends(json, "delta", delta.Low, delta.High);
            json.WriteString("title", delta.Title);
            json.WriteStartArray("lines");
            foreach (var line in delta.Lines) Line(json, line);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteBoolean("additive", attribution.IsAdditive);
        json.WriteEndObject();
    }

    static void Line(Utf8JsonWriter json, LineChange line)
    {
        json.WriteStartObject();
        json.WriteString("path", line.Path);
        json.WriteString("title", line.Title);
        Points(json, "old", line.Old);
        Points(json, "new", line.New);
        Reasons(json, "before", line.Before);
        Reasons(json, "now", line.Now);
        json.WriteEndObject();
    }

    static void Points(Utf8JsonWriter json, string name, Interval? points)
    {
        if (points is { } known) Ends(json, name, known.Low, known.High);
        else json.WriteNull(name);
    }

    static void Reasons(Utf8JsonWriter json, string name, ImmutableArray<ScoreReason> reasons)
    {
        json.WriteStartArray(name);
        foreach (var reason in reasons) json.WriteStringValue(reason.Text);
        json.WriteEndArray();
    }

    static void Ends(Utf8JsonWriter json, string name, decimal low, decimal high)
    {
        json.WriteStartObject(name);
        json.Exact("low", low);
        json.Exact("high", high);
        json.WriteEndObject();
    }
}
