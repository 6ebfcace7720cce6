using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Cli.Files;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Cli.Commands.Swaps;

using Verdict = FixScore.Pairing.Verdict;

/// <summary>What trials prove as JSON: an object for one record, a list for several.</summary>
static class SwapsInferJson
{
    public static byte[] Of(ImmutableArray<InferredRecord> records) => JsonOutput.Write(json =>
    {
        if (records.Length > 1) json.WriteStartArray();
        foreach (var record in records) Record(json, record);
        if (records.Length > 1) json.WriteEndArray();
    });

    static void Record(Utf8JsonWriter json, InferredRecord inferred)
    {
        json.WriteStartObject();
        json.WriteString("record", inferred.Record.Id);
        json.WriteBoolean("consistent", inferred.Verdicts.IsConsistent);
        json.WriteStartArray("contradictions");
        foreach (var trials in inferred.Verdicts.Contexts.SelectMany(context => context.Contradictions)) json.Strings(trials);
        json.WriteEndArray();
        json.WriteStartArray("parts");
        if (inferred.Verdicts.Contexts.IsEmpty) NeverTried(json, inferred.Record);
        foreach (var context in inferred.Verdicts.Contexts)
            foreach (var verdict in context.Parts) Part(json, context.Context, verdict);
        json.WriteEndArray();
        ComparisonJson.Write(json, inferred.Comparison);
        LocksJson.Write(json, inferred.Locks);
        SettlingJson.Write(json, inferred);
        json.WriteEndObject();
    }

    // Without trials there is no context, and nothing is known of any part.
    static void NeverTried(Utf8JsonWriter json, TeardownRecord record)
    {
        var groups = PartGroups.Of(record);
        foreach (var part in record.Parts.Where(part => groups.Of(part.Id).Parts.All(each => each.Role != Roles.Mainboard)))
        {
            json.WriteStartObject();
            json.WriteString("part", part.Id);
            json.WriteString("verdict", Word.Of(Verdict.Untested));
            json.Words("because", []);
            json.WriteEndObject();
        }
    }

    static void Part(Utf8JsonWriter json, SwapContext context, PartVerdict verdict)
    {
        json.WriteStartObject();
        json.WriteString("part", verdict.Part.Id);
        json.WriteString("verdict", Word.Of(verdict.Verdict));
        json.Context(context);
        if (!verdict.Worst.IsUnknown) json.Observed("worst", verdict.Worst);
        json.Words("because", verdict.Because);
        json.WriteEndObject();
    }
}
