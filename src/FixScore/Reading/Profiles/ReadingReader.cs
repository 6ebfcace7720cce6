using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace FixScore.Reading.Profiles;

/// <summary>Reads the points on which a source is silent; each other reading becomes a profile of its own.</summary>
sealed class ReadingReader(ProfileBinding binding, ResolvedProfile resolved, bool withReadings)
{
    readonly HashSet<string> ids = new(StringComparer.Ordinal);

    readonly Lazy<HashSet<(string Code, Pointer At)>> known = new(() =>
    {
        var plain = new ProfileBinding(binding.Catalogue, new());
        ProfileReader.Read(resolved, plain, withReadings: false);
        return [.. plain.Context.Problems.Select(problem => (problem.Code, problem.At))];
    });

    public ImmutableArray<SourceReading> Readings(ObjectReader profile)
    {
        if (withReadings) return profile.Objects("readings", Reading) is { IsDefault: false } readings ? readings : [];
        profile.Raw("readings");
        return [];
    }

    SourceReading Reading(ObjectReader reading)
    {
        var id = reading.Slug("id");
        if (!ids.Add(id)) binding.Error(reading.Pointer.Child("id"), "id-twice", "'{id}' is the id of another reading.", "Give each an id of its own.", ("id", id));
        SourcesReader.Read(reading, binding);
        reading.SkipRemarks();
        return new(id, reading.Text("point"), reading.Text("source"), reading.Text("taken"),
            reading.Objects("otherwise", Otherwise, required: true) is { IsDefault: false } others ? others : []);
    }

    OtherReading Otherwise(ObjectReader other)
    {
        var at = other.Pointer;
        var text = other.Text("text");
        other.SkipRemarks();
        var json = (JsonObject)resolved.Json.DeepClone();
        if (other.Raw("nodes", required: true) is not { } raw || JsonTree.From(raw, other.Member("nodes"), binding.Context) is not JsonObject patches)
        {
            if (other.Has("nodes")) binding.Error(at.Child("nodes"), "wrong-type", "Here an object is asked.", "Patches of nodes by their ids.");
            return new(text, Unreadable);
        }
        binding.Context.AddRange(NodePatches.Apply(json, patches, at.Child("nodes")));
        if (!JsonTree.IsTooDeep(json)) return new(text, Bind(new(json, resolved.Bases), raw, at.Child("nodes")));
        binding.Context.AddRange([JsonTree.TooDeep(at.Child("nodes"))]);
        return new(text, Unreadable);
    }

    // What is wrong with the profile as a whole is said there; here only what the patch brings in.
    Profile Bind(ResolvedProfile patched, JsonElement patches, Pointer at)
    {
        var inner = new ProfileBinding(binding.Catalogue, new());
        var profile = ProfileReader.Read(patched, inner, withReadings: false);
        foreach (var problem in inner.Context.Problems.Where(p => p.Severity == Severity.Error && !known.Value.Contains((p.Code, p.At))))
            binding.Error(PatchPlaces.Nearest(problem.At, patches, at, inner) ?? at, problem.Code, "Under this reading, at {pointer}: {message}", problem.Hint,
                ("pointer", problem.At.Text), ("message", problem.Message));
        return profile;
    }

    static Profile Unreadable { get; } = new()
    {
        Id = "", Version = "", Title = "", Status = ProfileStatus.Draft, Digest = "",
        Scale = new(0, 1, 0, RoundingMode.HalfUp), Root = NodeReader.Placeholder(new(0, 1)),
    };
}
