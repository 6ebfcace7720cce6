using System.Text.Json;
using Json.Schema;

namespace FixScore.Tests.Schemas;

/// <summary>Schemas as an independent validator reads them.</summary>
static class JsonSchemas
{
    public static JsonSchema Record { get; } = From(FixScore.Schemas.Record);

    public static JsonSchema Profile { get; } = From(FixScore.Schemas.Profile);

    public static JsonSchema From(string text) => JsonSchema.FromText(text, new BuildOptions { SchemaRegistry = new() });

    // The validator throws on numbers beyond double and on names that are no text; both are refusals.
    public static bool Takes(this JsonSchema schema, byte[] document)
    {
        using var parsed = JsonDocument.Parse(document);
        try
        {
            return schema.Evaluate(parsed.RootElement).IsValid;
        }
        catch (Exception failure) when (failure is OverflowException or FormatException or InvalidOperationException)
        {
            return false;
        }
    }
}
