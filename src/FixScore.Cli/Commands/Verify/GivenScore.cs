using System.Text.Json;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Verify;

/// <summary>The score document to verify: no more of it is believed than the profile it names and its mode.</summary>
sealed class GivenScore : IDisposable
{
    readonly JsonDocument document;
    readonly string file;

    GivenScore(JsonDocument document, string file) => (this.document, this.file) = (document, file);

    public JsonElement Root => document.RootElement;

    public ScoringMode Mode => Text(Root, "mode") == Word.Of(ScoringMode.Tolerant) ? ScoringMode.Tolerant : ScoringMode.Strict;

    public string ProfileName =>
        Root.TryGetProperty("profile", out var profile) && profile.ValueKind == JsonValueKind.Object && Text(profile, "id") is { } id && Text(profile, "version") is { } version
            ? $"{id}@{version}"
            : throw new InputException(file, "not-a-score", "does not name its profile", "Give the profile with --profile.");

    /// <exception cref="InputException">It is no score document.</exception>
    public static GivenScore Parse(Input input)
    {
        try
        {
            // A member that stands twice could show people one value and the verifier another.
            var document = JsonDocument.Parse(input.WithoutMark, new() { MaxDepth = 64, AllowDuplicateProperties = false });
            if (document.RootElement.ValueKind == JsonValueKind.Object && HasDigest(document.RootElement) && Text(document.RootElement, "format") == ScoreDocument.Format)
                return new(document, input.Name);
            document.Dispose();
        }
        catch (Exception failure) when (failure is JsonException or InvalidOperationException)
        {
            // Said below: whatever is wrong with it, it is no score document.
        }
        throw new InputException(input.Name, "not-a-score", $"is not a score document of the format {ScoreDocument.Format}", "Give the file that 'fixscore score --out' wrote.");
    }

    public void Dispose() => document.Dispose();

    // Throws where there is no canonical form: half of a surrogate pair, a number beyond double.
    static bool HasDigest(JsonElement root) => Canonical.Digest.Of(root).Length > 0;

    static string? Text(JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
}
