using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;

namespace FixScore.Patching;

/// <summary>A place in a JSON document (RFC 6901) and what can be done there.</summary>
/// <param name="Steps">Names and indices from the root, unescaped.</param>
sealed record PatchPath(ImmutableArray<string> Steps)
{
    public static PatchPath Parse(string pointer)
    {
        if (pointer.Length == 0) return new([]);
        if (pointer[0] != '/') throw new JsonPatchException($"'{pointer}' is no JSON Pointer.");
        return new([.. pointer[1..].Split('/').Select(step => step.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal))]);
    }

    public JsonNode? Find(JsonNode? document) => Steps.Aggregate(document, Child);

    public JsonNode? Add(JsonNode? document, JsonNode? value)
    {
        if (Steps.IsEmpty) return value;
        var (holder, last) = (Holder(document), Steps[^1]);
        if (holder is JsonArray list) list.Insert(last == "-" ? list.Count : Index(last, list.Count), value);
        else ((JsonObject)holder)[last] = value;
        return document;
    }

    public JsonNode? Replace(JsonNode? document, JsonNode? value)
    {
        if (Steps.IsEmpty) return value;
        var (holder, last) = (Holder(document), Steps[^1]);
        Child(holder, last);
        if (holder is JsonArray list) list[Index(last, list.Count - 1)] = value;
        else ((JsonObject)holder)[last] = value;
        return document;
    }

    public JsonNode? Remove(JsonNode? document)
    {
        if (Steps.IsEmpty) return null;
        var (holder, last) = (Holder(document), Steps[^1]);
        Child(holder, last);
        if (holder is JsonArray list) list.RemoveAt(Index(last, list.Count - 1));
        else ((JsonObject)holder).Remove(last);
        return document;
    }

    public override string ToString() => Steps.Aggregate(Pointer.Root, (at, step) => at.Child(step)).Text;

    JsonNode Holder(JsonNode? document) =>
        Steps[..^1].Aggregate(document, Child) is { } holder and (JsonObject or JsonArray) ? holder : throw Nowhere();

    JsonNode? Child(JsonNode? node, string step) => node switch
    {
        JsonObject members when members.TryGetPropertyValue(step, out var value) => value,
        JsonArray list => list[Index(step, list.Count - 1)],
        _ => throw Nowhere(),
    };

    int Index(string step, int most) =>
        int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index <= most && (step.Length == 1 || step[0] != '0')
            ? index
            : throw Nowhere();

    JsonPatchException Nowhere() => new($"The document has no '{this}'.");
}
