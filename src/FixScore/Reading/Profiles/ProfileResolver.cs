using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Canonical;

namespace FixScore.Reading.Profiles;

/// <summary>Merges a profile into the one it extends, and that into its own base, and so on.</summary>
sealed class ProfileResolver(IProfileSource bases)
{
    const int MostBases = 32;

    /// <summary>The resolved profile; <c>null</c> when a base is missing or the chain comes back to itself.</summary>
    public ResolvedProfile? Resolve(JsonElement own, ReadingContext context, ImmutableArray<string> chain = default)
    {
        var json = JsonTree.From(own, Place.Root, context) as JsonObject;
        if (json is null)
        {
            context.Error(Pointer.Root, "wrong-type", "A profile is an object.", "Start from 'fixscore new profile'.");
            return null;
        }
        var name = $"{TextOf(json, "id")}@{TextOf(json, "version")}";
        var resolved = json.ContainsKey("extends") ? Extended(own, json, context, [.. chain.IsDefault ? [] : chain, name]) : new(json, []);
        if (resolved is null) return null;
        var patched = Patched(resolved, json["nodes"], context);
        if (!JsonTree.IsTooDeep(patched.Json)) return patched;
        context.AddRange([JsonTree.TooDeep(Pointer.Root.Child("nodes"))]);
        return null;
    }

    ResolvedProfile? Extended(JsonElement own, JsonObject json, ReadingContext context, ImmutableArray<string> chain)
    {
        if (new ObjectReader(own, context, Place.Root).Object("extends", BaseReference) is not { Id.Length: > 0, Version.Length: > 0 } wanted) return null;
        var at = Pointer.Root.Child("extends");
        if (chain.Contains($"{wanted.Id}@{wanted.Version}"))
        {
            context.Error(at, "extends-itself", "The profile extends itself: {chain}.", "A base must not lead back.",
                ("chain", string.Join(" extends ", chain.Add($"{wanted.Id}@{wanted.Version}"))));
            return null;
        }
        if (chain.Length > MostBases)
        {
            context.Error(at, "extends-too-long", "More than {most} profiles extend each other.", "Merge some of them.", ("most", MostBases));
            return null;
        }
        if (BaseOf(wanted, at, context, chain) is not { } found) return null;
        var members = (JsonObject)json.DeepClone();
        foreach (var name in (string[])["extends", "nodes"]) members.Remove(name);
        return new((JsonObject)MergePatch.Apply(found.Json, members)!, [new(wanted.Id, wanted.Version, found.Digest), .. found.Bases]);
    }

    ResolvedProfile? BaseOf(ProfileReference wanted, Pointer at, ReadingContext context, ImmutableArray<string> chain)
    {
        if (bases.Find(wanted.Id, wanted.Version) is not { } text)
        {
            context.Error(at, "base-unknown", "There is no profile {id} in version {version} here.", "Correct the reference, or give the folder it is in.",
                ("id", wanted.Id), ("version", wanted.Version));
            return null;
        }
        var inner = new ReadingContext();
        var (document, problem, _) = JsonText.Parse(JsonText.WithoutMark(text));
        using var parsed = document;
        if (problem is not null) inner.AddRange([problem]);
        var resolved = parsed is null ? null : Resolve(parsed.RootElement, inner, chain);
        foreach (var wrong in inner.Problems)
            context.Error(at, wrong.Code, "In the base {id}, at {pointer}: {message}", wrong.Hint,
                ("id", wanted.Id), ("pointer", wrong.At.Text), ("message", wrong.Message));
        return resolved is null || !HasDigest(resolved, wanted, at, context) ? null : resolved;
    }

    static bool HasDigest(ResolvedProfile found, ProfileReference wanted, Pointer at, ReadingContext context)
    {
        if (wanted.Digest.Length == 0 || wanted.Digest == found.Digest) return true;
        context.Error(at.Child("digest"), "base-changed", "The base {id} has the digest {digest}.", "The base is not the one meant; check what changed.",
            ("id", wanted.Id), ("digest", found.Digest));
        return false;
    }

    static ResolvedProfile Patched(ResolvedProfile resolved, JsonNode? patches, ReadingContext context)
    {
        resolved.Json.Remove("nodes");
        if (patches is not JsonObject byNode)
        {
            if (patches is not null) context.Error(Pointer.Root.Child("nodes"), "wrong-type", "Here an object is asked.", "Patches of nodes by their ids.");
            return resolved;
        }
        context.AddRange(NodePatches.Apply(resolved.Json, byNode, Pointer.Root.Child("nodes")));
        return resolved;
    }

    static ProfileReference BaseReference(ObjectReader extends) => new(
        extends.Slug("id"),
        extends.Matching("version", SemanticVersion.IsValid, "a semantic version such as 1.0.0"),
        extends.MatchingOrNull("digest", IsDigest, "a digest (sha256: and 64 hexadecimal digits)") ?? "");

    static bool IsDigest(string text) =>
        text.StartsWith("sha256:", StringComparison.Ordinal) && text.Length == 71 && text.AsSpan(7).IndexOfAnyExcept("0123456789abcdef") < 0;

    static string TextOf(JsonObject json, string name) => json[name] is JsonValue value && value.TryGetValue<string>(out var text) ? text : "";
}
