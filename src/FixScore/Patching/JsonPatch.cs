using System.Text.Json;
using System.Text.Json.Nodes;

namespace FixScore.Patching;

/// <summary>Applies JSON Patch, RFC 6902: add, remove, replace, move, copy and test. Thread safe.</summary>
public static class JsonPatch
{
    static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    /// <summary>The document after all operations of a patch; the one handed in is left as it is.</summary>
    /// <param name="document">The document; <c>null</c> is the JSON value null.</param>
    /// <param name="patch">The patch as JSON text.</param>
    /// <exception cref="JsonPatchException">The patch is malformed, or one of its operations cannot be done: then nothing is.</exception>
    public static JsonNode? Apply(JsonNode? document, string patch) =>
        Read(patch).Aggregate(document?.DeepClone(), (changed, operation) => operation.Apply(changed));

    /// <summary>The places that a patch names, in its order: <c>path</c>, and <c>from</c> before it. What a test looks at is among them.</summary>
    /// <param name="patch">The patch as JSON text.</param>
    /// <exception cref="JsonPatchException">The patch is malformed.</exception>
    public static IEnumerable<PatchedPlace> Places(string patch) => Read(patch).SelectMany(operation => operation.Places);

    static PatchOperation[] Read(string patch)
    {
        try
        {
            using var parsed = JsonDocument.Parse(patch, Strict);
            if (parsed.RootElement.ValueKind != JsonValueKind.Array) throw new JsonPatchException("A patch is a list of operations.");
            return [.. parsed.RootElement.EnumerateArray().Select(PatchOperation.Read)];
        }
        catch (JsonException failure)
        {
            throw new JsonPatchException($"The patch is no JSON: {failure.Message}");
        }
        catch (InvalidOperationException)
        {
            throw new JsonPatchException("A text of the patch holds half of a surrogate pair.");
        }
    }
}

/// <summary>A place that a patch names.</summary>
/// <param name="At">The place.</param>
/// <param name="Shifts">Whether entries of a list may move up or down by what is done there.</param>
public readonly record struct PatchedPlace(Pointer At, bool Shifts);

/// <summary>A patch that is malformed or does not apply.</summary>
/// <param name="message">Why.</param>
public sealed class JsonPatchException(string message) : Exception(message);
