using System.Globalization;
using System.Text.Json;

namespace FixScore.Reading;

/// <summary>Follows RFC 6901 JSON Pointers.</summary>
static class JsonPointers
{
    /// <summary>What a pointer leads to; <c>null</c> when it leads nowhere or is no pointer.</summary>
    public static JsonElement? Resolve(JsonElement element, string pointer)
    {
        if (pointer.Length == 0) return element;
        if (pointer[0] != '/' || element.ValueKind == JsonValueKind.Undefined) return null;
        JsonElement? found = element;
        foreach (var step in pointer.Split('/').Skip(1))
        {
            if (found is not { } within || Unescape(step) is not { } name) return null;
            found = Step(within, name);
        }
        return found;
    }

    static JsonElement? Step(JsonElement within, string name) => within.ValueKind switch
    {
        JsonValueKind.Object => within.TryGetProperty(name, out var member) ? member : null,
        JsonValueKind.Array => int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            && index < within.GetArrayLength() && (name == "0" || name[0] != '0') ? within[index] : null,
        _ => null,
    };

    static string? Unescape(string step)
    {
        for (var i = step.IndexOf('~', StringComparison.Ordinal); i >= 0; i = step.IndexOf('~', i + 1))
            if (i + 1 >= step.Length || step[i + 1] is not ('0' or '1')) return null;
        return step.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
    }
}
