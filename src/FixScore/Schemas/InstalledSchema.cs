using System.Collections.Immutable;
using System.Text.Json.Nodes;

namespace FixScore.Schemata;

/// <summary>Adds to the schema of profiles what is installed: the ids of criteria and, for each, the options it takes.</summary>
static class InstalledSchema
{
    public static JsonObject Of(JsonObject schema, Catalogue catalogue)
    {
        var definitions = (JsonObject)schema["$defs"]!;
        var leaf = (JsonObject)definitions["node"]!;
        var conditions = new JsonArray();
        foreach (var criterion in catalogue.Criteria.Select(each => each.Item.Info)) conditions.Add((JsonNode)WhenNamed(criterion));
        conditions.Add((JsonNode)OnlyInstalled(catalogue));
        definitions["installed"] = new JsonObject { ["description"] = "What the installed criteria take.", ["allOf"] = conditions };
        (leaf["allOf"] as JsonArray ?? Added(leaf)).Add((JsonNode)new JsonObject { ["$ref"] = "#/$defs/installed" });
        return schema;
    }

    static JsonObject OnlyInstalled(Catalogue catalogue) => new()
    {
        ["properties"] = new JsonObject { ["criterion"] = new JsonObject { ["enum"] = Words(catalogue.Criteria.Select(each => each.Item.Info.Id)) } },
    };

    static JsonArray Added(JsonObject node)
    {
        var all = new JsonArray();
        node["allOf"] = all;
        return all;
    }

    static JsonObject WhenNamed(CriterionInfo info) => new()
    {
        ["if"] = new JsonObject
        {
            ["required"] = Words(["criterion"]),
            ["properties"] = new JsonObject { ["criterion"] = new JsonObject { ["const"] = info.Id } },
        },
        ["then"] = new JsonObject { ["properties"] = new JsonObject { ["options"] = OptionsOf(info) } },
    };

    static JsonObject OptionsOf(CriterionInfo info)
    {
        var properties = new JsonObject();
        foreach (var option in info.Options) properties[option.Name] = OptionSchema(option);
        return new() { ["type"] = "object", ["additionalProperties"] = false, ["description"] = $"{info.Title}: {info.Measures}.", ["properties"] = properties };
    }

    static JsonObject OptionSchema(Option option)
    {
        var schema = option switch
        {
            NumberOption number => new JsonObject { ["type"] = "number", ["minimum"] = number.Min, ["maximum"] = number.Max },
            CountOption count => new JsonObject { ["type"] = "integer", ["minimum"] = count.Min, ["maximum"] = count.Max },
            FlagOption => new JsonObject { ["type"] = "boolean" },
            IChoiceOption choice => new JsonObject { ["enum"] = Words(choice.Words) },
            BandsOption => Bands(),
            LevelsOption levels => Levels(levels.Words),
            _ => new JsonObject { ["type"] = "array", ["items"] = new JsonObject { ["type"] = "string" } },
        };
        schema["description"] = option.Unit is { } unit ? $"{option.Text} Unit: {unit}." : option.Text;
        return schema;
    }

    static JsonObject Bands() => new()
    {
        ["type"] = "array", ["minItems"] = 1,
        ["oneOf"] = new JsonArray([.. ((string[])["atMost", "atLeast", "at"]).Select(form => new JsonObject
        {
            ["items"] = new JsonObject
            {
                ["type"] = "object", ["additionalProperties"] = false, ["required"] = Words([form, "points"]),
                ["properties"] = new JsonObject { [form] = new JsonObject { ["type"] = "number" }, ["points"] = new JsonObject { ["type"] = "number" } },
            },
        })]),
    };

    static JsonObject Levels(ImmutableArray<string> words)
    {
        var properties = new JsonObject();
        foreach (var word in words) properties[word] = new JsonObject { ["type"] = "number" };
        return new() { ["type"] = "object", ["additionalProperties"] = false, ["properties"] = properties };
    }

    static JsonArray Words(IEnumerable<string> words)
    {
        var array = new JsonArray();
        foreach (var word in words) array.Add((JsonNode)word);
        return array;
    }
}
