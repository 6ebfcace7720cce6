using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Schemata;

namespace FixScore;

/// <summary>The published JSON Schemas (2020-12) of the formats. They describe structure; meaning is checked by the readers. Thread safe.</summary>
public static class Schemas
{
    /// <summary>The schema of teardown records.</summary>
    public static string Record { get; } = Text("record.schema.json");

    /// <summary>The schema of profiles, whatever is installed.</summary>
    public static string Profile { get; } = Text("profile.schema.json");

    /// <summary>The schema of score documents.</summary>
    public static string Score { get; } = Text("score.schema.json");

    /// <summary>The schema of profiles that use what is installed: criteria by name, each with its options.</summary>
    public static string ProfileFor(Catalogue catalogue) => InstalledSchema.Of((JsonObject)JsonNode.Parse(Profile)!, catalogue).ToJsonString(Indented);

    internal static JsonSerializerOptions Indented { get; } = new()
    {
        WriteIndented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        TypeInfoResolver = System.Text.Json.Serialization.Metadata.JsonTypeInfoResolver.Combine(),
    };

    static string Text(string name)
    {
        using var stream = typeof(Schemas).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
