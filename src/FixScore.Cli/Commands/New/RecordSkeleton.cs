using System.Text.Json.Nodes;

namespace FixScore.Cli.Commands.New;

/// <summary>What of an old record still holds for the next assessment: how the device is built, not what happened on the bench.</summary>
static class RecordSkeleton
{
    static readonly string[] Kept = ["$schema", "format", "id", "device", "assessment", "parts", "absent", "joints", "tools", "consumables", "operations", "milestones", "spares", "documentation", "support"];
    static readonly string[] ObservedOfParts = ["perUnit", "evidence"];
    static readonly string[] ObservedOfOperations = ["seconds", "waitSeconds", "reassemblySeconds", "footage", "outcomes", "evidence"];

    public static JsonObject Of(JsonObject old)
    {
        var record = new JsonObject();
        foreach (var name in Kept)
            if (old[name] is { } value) record[name] = value.DeepClone();
        Strip(record["parts"], ObservedOfParts);
        Strip(record["operations"], ObservedOfOperations);
        foreach (var list in (string[])["joints", "tools", "consumables", "milestones", "spares", "documentation"]) Strip(record[list], ["evidence"]);
        Strip(record["assessment"]!["units"], ["software", "evidence"]);
        return record;
    }

    static void Strip(JsonNode? list, string[] members)
    {
        foreach (var entry in (list as JsonArray ?? []).OfType<JsonObject>())
        {
            foreach (var member in members) entry.Remove(member);
            foreach (var (_, value) in entry.ToArray()) Strip(value, ["evidence"]);
        }
    }
}
