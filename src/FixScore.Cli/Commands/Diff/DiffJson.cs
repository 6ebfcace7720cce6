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
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteBoolean("additive", attribution.IsAdditive);
        json.WriteEndObject();
    }

    static void Ends(Utf8JsonWriter json, string name, decimal low, decimal high)
    {
        json.WriteStartObject(name);
        json.Exact("low", low);
        json.Exact("high", high);
        json.WriteEndObject();
    }
}
