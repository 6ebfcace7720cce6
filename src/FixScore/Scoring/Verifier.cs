using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Canonical;
using FixScore.Scoring;

namespace FixScore;

/// <summary>How a score document compares to the same score computed again.</summary>
public enum Verdict
{
    /// <summary>Every member is the same.</summary>
    Identical,

    /// <summary>Only versions of the kernel or of plugins, or text made for people, differ.</summary>
    Equal,

    /// <summary>Something that counts differs.</summary>
    Different,
}

/// <summary>What a verification found.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Differences">Pointers to members that differ, in the order of the document; the first is the first difference that counts, when one does.</param>
public sealed record Verification(Verdict Verdict, ImmutableArray<Difference> Differences);

/// <summary>A member that differs.</summary>
/// <param name="At">Where in the score document.</param>
/// <param name="Given">Its JSON text in the document given; empty when it is missing there.</param>
/// <param name="Computed">Its JSON text as computed; empty when it is missing there.</param>
/// <param name="Counts">Whether it is more than a version or a text.</param>
public sealed record Difference(Pointer At, string Given, string Computed, bool Counts);

/// <summary>Compares score documents with the same scores computed again. Thread safe.</summary>
public static class Verifier
{
    /// <summary>Compares a score document, as JSON, with one computed now.</summary>
    public static Verification Compare(JsonElement given, ScoreDocument computed)
    {
        using var again = JsonDocument.Parse(computed.ToJson());
        var differences = DocumentDifferences.Between(given, again.RootElement).ToImmutableArray();
        var verdict = differences.IsEmpty ? Verdict.Identical : differences.Any(each => each.Counts) ? Verdict.Different : Verdict.Equal;
        return new(verdict, [.. differences.OrderByDescending(each => each.Counts)]);
    }

    /// <summary>Whether a score document's digest is that of its content.</summary>
    public static bool HasOwnDigest(JsonElement given) =>
        given.ValueKind == JsonValueKind.Object && given.TryGetProperty("digest", out var digest)
        && digest.ValueKind == JsonValueKind.String && digest.GetString() == Digest.Of(given, "digest", "$schema");
}
