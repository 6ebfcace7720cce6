using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Canonical;

namespace FixScore.Reading.Profiles;

/// <summary>Turns parsed text into a tree that can be patched. Numbers keep their text.</summary>
static class JsonTree
{
    /// <summary>The tree; a member that stands twice and text that is none are problems, and are left out.</summary>
    public static JsonNode? From(JsonElement element, Place place, ReadingContext context) => element.ValueKind switch
    {
        JsonValueKind.Object => Members(element, place, context),
        JsonValueKind.Array => Elements(element, place, context),
        JsonValueKind.String => Text(element, place, context),
        JsonValueKind.Number => Number(element, place, context),
        JsonValueKind.Null => null,
        _ => JsonValue.Create(element.Clone()),
    };

    /// <summary>Whether patches piled up more levels than a text may have.</summary>
    public static bool IsTooDeep(JsonNode? node, int levels = JsonText.MaxDepth) => node switch
    {
        JsonObject members => levels == 0 || members.Any(member => IsTooDeep(member.Value, levels - 1)),
        JsonArray elements => levels == 0 || elements.Any(element => IsTooDeep(element, levels - 1)),
        _ => false,
    };

    public static Problem TooDeep(Pointer at) => Problem.Of(
        Severity.Error, at, "json.too-deep", "Merged, objects and lists are nested more than 64 deep.", "No format here needs more than a few levels.");

    public static JsonElement ToElement(JsonNode node)
    {
        using var document = JsonDocument.Parse(node.ToJsonString());
        return document.RootElement.Clone();
    }

    static JsonObject Members(JsonElement element, Place place, ReadingContext context)
    {
        var members = new JsonObject();
        foreach (var member in element.EnumerateObject())
        {
            var (name, at) = (member.Name, new Place(place, member.Name));
            if (members.ContainsKey(name))
                context.Error(at.Pointer, "duplicate-member", "The member '{name}' stands twice in one object.", "Keep one of them.", ("name", name));
            else
                members.Add(name, From(member.Value, at, context));
        }
        return members;
    }

    static JsonArray Elements(JsonElement element, Place place, ReadingContext context)
    {
        var elements = new JsonArray();
        var index = 0;
        foreach (var each in element.EnumerateArray()) elements.Add(From(each, new Place(place, null, index++), context));
        return elements;
    }

    static JsonValue? Text(JsonElement element, Place place, ReadingContext context)
    {
        try
        {
            return JsonValue.Create(element.GetString());
        }
        catch (InvalidOperationException)
        {
            context.Error(place.Pointer, "lone-surrogate", "The text holds half of a surrogate pair.", "Write the character itself, in UTF-8.");
            return JsonValue.Create("");
        }
    }

    // One that no digest can hold. A plain one in its place keeps the rest of the reading going.
    static JsonValue Number(JsonElement element, Place place, ReadingContext context)
    {
        if (CanonicalNumber.HasForm(element)) return JsonValue.Create(element.Clone())!;
        context.Error(place.Pointer, "number-range", "The number is 1e15 or more in size.", "Correct the number, or round it to what was measured.");
        return JsonValue.Create(1);
    }
}
