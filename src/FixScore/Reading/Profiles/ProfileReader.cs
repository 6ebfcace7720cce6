using System.Collections.Immutable;
using System.Text.Json;

namespace FixScore.Reading.Profiles;

/// <summary>Reads a resolved profile and binds it to what is installed.</summary>
sealed class ProfileReader(ProfileBinding binding, ResolvedProfile resolved, bool withReadings)
{
    public static Profile Read(ResolvedProfile resolved, ProfileBinding binding, bool withReadings = true)
    {
        var reader = new ObjectReader(JsonTree.ToElement(resolved.Json), binding.Context, Place.Root);
        var profile = new ProfileReader(binding, resolved, withReadings).Read(reader);
        reader.Done();
        return profile;
    }

    Profile Read(ObjectReader profile)
    {
        profile.TextOrNull("$schema");
        profile.Matching("format", text => text == Profile.Format, $"a format known here ({Profile.Format})");
        var status = profile.Word<ProfileStatus>("status");
        var scale = profile.Object("scale", Scale, required: true) ?? new(0, 1, 0, RoundingMode.HalfUp);
        var sets = ReadSets(profile);
        var root = profile.Object("root", node => new NodeReader(binding).Read(node, new(scale.Points, true, null, null)), required: true);
        SourcesReader.Read(profile, binding);
        return new()
        {
            Id = profile.Slug("id"),
            Version = profile.Matching("version", SemanticVersion.IsValid, "a semantic version such as 1.0.0"),
            Title = profile.Text("title"),
            Status = status,
            Source = profile.Object("source", Source, required: true),
            Note = profile.TextOrNull("note"),
            Notices = profile.Texts("notices"),
            AppliesTo = profile.Object("appliesTo", AppliesTo),
            Scale = scale,
            PartSets = sets,
            Root = root ?? NodeReader.Placeholder(scale.Points),
            Gates = new GateReader(binding, scale).Gates(profile),
            Classes = new ClassReader(binding, scale, status).Classes(profile),
            ClassesOn = profile.WordOrNull<ClassBasis>("classesOn") ?? ClassBasis.Exact,
            Readings = new ReadingReader(binding, resolved, withReadings).Readings(profile),
            Digest = resolved.Digest,
            Bases = resolved.Bases,
        };
    }

    ProfileScale Scale(ObjectReader scale)
    {
        var read = new ProfileScale(scale.Number("min"), scale.Number("max"), scale.Whole("decimals", 0, 12), scale.Word<RoundingMode>("rounding"));
        if (read.Min < read.Max) return read;
        binding.Error(scale.Pointer, "scale-reversed", "The scale goes from {min} to {max}.", "The best result has the most points.", ("min", read.Min), ("max", read.Max));
        return read with { Min = 0, Max = 1 };
    }

    ImmutableArray<PartSet> ReadSets(ObjectReader profile)
    {
        var sets = profile.Map("partSets", (value, at, reader) => Roles(value, at, reader));
        binding.PartSetsUnreadable = profile.Has("partSets") && profile.KindOf("partSets") != JsonValueKind.Object;
        foreach (var (name, roles) in sets) binding.PartSets.TryAdd(name, new(name, roles));
        return [.. sets.Select(set => binding.PartSets[set.Key])];
    }

    ImmutableArray<KeyValuePair<string, decimal>> Roles(JsonElement value, Place at, ObjectReader reader)
    {
        var roles = reader.MapValue(value, at, (weight, place, inner) => PositiveWeight(weight, place, inner));
        foreach (var (role, _) in roles)
            if (!Slugs.IsSlug(role))
                binding.Error(at.Pointer.Child(role), "wrong-text", "'{role}' is not a role.", "Roles are lower-case words joined by -.", ("role", role));
        if (roles.IsEmpty) binding.Error(at.Pointer, "too-few", "A set of parts needs at least one role.", "Add roles with their weights.");
        return roles;
    }

    decimal PositiveWeight(JsonElement value, Place at, ObjectReader reader)
    {
        if (reader.NumberValue(value, at) is not { } weight) return 1;
        if (weight <= 0) binding.Error(at.Pointer, "weight-not-positive", "A weight is above 0.", "Remove what should not count.");
        return weight;
    }

    static ProfileSource Source(ObjectReader source) => new(source.Text("title"), source.Text("locator"), source.Date("date"));

    static AppliesTo AppliesTo(ObjectReader applies) => new(applies.Ids("kinds"), applies.FlagOrNull("foldable"));
}
