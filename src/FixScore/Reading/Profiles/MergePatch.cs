using System.Text.Json.Nodes;

namespace FixScore.Reading.Profiles;

/// <summary>RFC 7396 JSON Merge Patch.</summary>
static class MergePatch
{
    /// <summary>The patched value, a new tree; neither argument is changed.</summary>
    public static JsonNode? Apply(JsonNode? target, JsonNode? patch)
    {
        if (patch is not JsonObject members) return patch?.DeepClone();
        var result = target is JsonObject original ? (JsonObject)original.DeepClone() : [];
        foreach (var (name, value) in members)
        {
            if (value is null) result.Remove(name);
            else result[name] = Apply(result[name], value);
        }
        return result;
    }
}
