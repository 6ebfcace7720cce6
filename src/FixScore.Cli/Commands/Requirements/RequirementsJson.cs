using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Requirements;

/// <summary>Findings as JSON: an object for one record, a list for several.</summary>
static class RequirementsJson
{
    public static byte[] Of(ImmutableArray<CheckedRecord> records) => JsonOutput.Write(json =>
    {
        if (records.Length > 1) json.WriteStartArray();
        foreach (var record in records) Record(json, record);
        if (records.Length > 1) json.WriteEndArray();
    });

    static void Record(Utf8JsonWriter json, CheckedRecord result)
    {
        json.WriteStartObject();
        json.WriteString("record", result.Record.Id);
        json.WriteStartArray("findings");
        foreach (var set in result.Sets)
            foreach (var finding in set.Findings) Finding(json, set.Info, finding);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    static void Finding(Utf8JsonWriter json, RequirementInfo info, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("rule", $"{info.Id}/{finding.Rule}");
        json.WriteString("source", info.Source);
        json.WriteString("article", finding.Article);
        json.WriteString("status", Word.Of(finding.Status));
        json.WriteString("why", finding.Why.Text);
        json.WriteStartArray("pointers");
        foreach (var pointer in finding.Why.Pointers) json.WriteStringValue(pointer.Text);
        json.WriteEndArray();
        json.WriteString("caution", info.Caution);
        json.WriteEndObject();
    }
}
