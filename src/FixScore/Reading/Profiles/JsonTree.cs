using System.Text.Json;
using System.Text.Json.Nodes;

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
            if (NameOf(member, place, context) is not { } name) continue;
            var at = new Place(place, name);
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
            Surrogate(place, context);
            return JsonValue.Create("");
        }
    }

    static string? NameOf(JsonProperty member, Place place, ReadingContext context)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            Surrogate(place, context);
            return null;
        }
    }

    static void Surrogate(Place place, ReadingContext context) =>
        context.Error(place.Pointer, "lone-surrogate", "The text holds half of a surrogate pair.", "Write the character itself, in UTF-8.");
}
