using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace FixScore;

/// <summary>Puts installed criteria into the schema of profiles.</summary>
static class ProfileSchema
{
    static readonly JsonWriterOptions Layout = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string For(string schema, Catalogue catalogue)
    {
        var root = JsonNode.Parse(schema)!.AsObject();
        var definitions = root["$defs"]!.AsObject();
        var node = definitions["node"]!.AsObject();
        CriterionInfo[] criteria = [.. catalogue.Criteria.Select(each => each.Item.Info)];
        node["properties"]!["criterion"] = Criterion(criteria);
        if (criteria.Length > 0) node["allOf"] = new JsonArray([.. criteria.Select(Rule)]);
        foreach (var criterion in criteria) definitions.Add(NameOf(criterion), Options(criterion));
        return Text(root);
    }

    // A list without words is no valid enum: nothing is allowed where nothing is installed.
    static JsonObject Criterion(CriterionInfo[] criteria) => criteria.Length == 0
        ? new() { ["not"] = new JsonObject(), ["description"] = "In a leaf: id of a criterion. None is installed." }
        : new()
        {
            ["enum"] = new JsonArray([.. criteria.Select(criterion => JsonValue.Create(criterion.Id))]),
            ["description"] = "In a leaf: id of an installed criterion. " + string.Join("; ", criteria.Select(criterion => $"{criterion.Id}: {criterion.Title}")) + ".",
        };

    static JsonObject Rule(CriterionInfo criterion) => new()
    {
        ["if"] = new JsonObject
        {
            ["required"] = new JsonArray("criterion"),
            ["properties"] = new JsonObject { ["criterion"] = new JsonObject { ["const"] = criterion.Id } },
        },
        ["then"] = new JsonObject
        {
            ["properties"] = new JsonObject { ["options"] = new JsonObject { ["$ref"] = $"#/$defs/{NameOf(criterion)}" } },
        },
    };

    static JsonObject Options(CriterionInfo criterion) => new()
    {
        ["type"] = "object",
        ["additionalProperties"] = false,
        ["title"] = criterion.Title,
        ["description"] = $"Options of {criterion.Id}, which measures {criterion.Measures} in {criterion.Unit}. Source: {criterion.Source}.",
        ["properties"] = new JsonObject(criterion.Options.Select(option => KeyValuePair.Create<string, JsonNode?>(option.Name, OptionSchema.Of(option)))),
    };

    static string NameOf(CriterionInfo criterion) => $"options.{criterion.Id}";

    static string Text(JsonObject schema)
    {
        using var output = new MemoryStream();
        using (var writer = new Utf8JsonWriter(output, Layout)) schema.WriteTo(writer);
        return Encoding.UTF8.GetString(output.ToArray());
    }
}
