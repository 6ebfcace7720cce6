using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Analysis.Improving;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Improve;

/// <summary>What a search found, as one JSON object.</summary>
static class ImproveJson
{
    public static byte[] Of(Improvement found) => JsonOutput.Write(json =>
    {
        json.WriteStartObject();
        if (found.Target.Class is { } label) json.WriteString("target", label);
        else json.Exact("target", found.Target.Points);
        json.WriteStartObject("now");
        Total(json, found.Now);
        json.WriteEndObject();
        Sets(json, "sets", found.Sets, Change);
        json.WriteBoolean("optimal", found.IsOptimal);
        if (found.LowerBound is { } bound) json.WriteNumber("lowerBound", bound);
        else json.WriteNull("lowerBound");
        Sets(json, "front", found.Front, (writer, change) => writer.WriteStringValue(change.Id));
        json.WriteStartArray("candidates");
        foreach (var candidate in found.Candidates) Change(json, candidate);
        json.WriteEndArray();
        json.Words("unusable", found.Unusable);
        json.Words("withoutChanges", found.WithoutChanges);
        json.WriteNumber("tried", found.Tried);
        json.WriteEndObject();
    });

    static void Sets(Utf8JsonWriter json, string name, ImmutableArray<ImprovementSet> sets, Action<Utf8JsonWriter, CandidateChange> change)
    {
        json.WriteStartArray(name);
        foreach (var set in sets)
        {
            json.WriteStartObject();
            json.WriteStartArray("changes");
            foreach (var each in set.Changes) change(json, each);
            json.WriteEndArray();
            Total(json, set.Total);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    static void Change(Utf8JsonWriter json, CandidateChange candidate)
    {
        json.WriteStartObject();
        json.WriteString("id", candidate.Id);
        json.WriteString("text", candidate.Change.Why.Text);
        json.WritePropertyName("patch");
        using var patch = JsonDocument.Parse(candidate.Change.JsonPatch);
        patch.RootElement.WriteTo(json);
        json.WriteEndObject();
    }

    static void Total(Utf8JsonWriter json, ScoreTotal total)
    {
        json.WriteStartObject("total");
        json.Exact("low", total.Total.Low);
        json.Exact("high", total.Total.High);
        json.WriteEndObject();
        if (total.Class is not { } range) return;
        json.WriteStartObject("class");
        json.WriteString("low", range.Low);
        json.WriteString("high", range.High);
        json.WriteEndObject();
    }
}
