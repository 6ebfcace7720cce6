using System.Collections.Immutable;

namespace FixScore.Reading.Profiles;

/// <summary>Reads gates; called when all nodes are known.</summary>
sealed class GateReader(ProfileBinding binding, ProfileScale scale)
{
    readonly HashSet<string> ids = new(StringComparer.Ordinal);

    public ImmutableArray<Gate> Gates(ObjectReader profile) => profile.Objects("gates", Gate) is { IsDefault: false } gates ? gates : [];

    Gate Gate(ObjectReader gate)
    {
        var id = gate.Slug("id");
        if (!ids.Add(id)) binding.Error(gate.Pointer.Child("id"), "id-twice", "'{id}' is the id of another gate.", "Give each gate an id of its own.", ("id", id));
        var cap = gate.Number("cap");
        if (gate.Has("cap") && !scale.Points.Whole.Contains(cap))
            binding.Error(gate.Pointer.Child("cap"), "points-off-scale", "{points} is not on the scale from {min} to {max}.", "Correct the cap.",
                ("points", cap), ("min", scale.Min), ("max", scale.Max));
        SourcesReader.Read(gate, binding);
        gate.SkipRemarks();
        return new(id, gate.Object("when", When, required: true) ?? new("", null, 0, false), cap, gate.Text("reason"));
    }

    GateCondition When(ObjectReader when)
    {
        var (node, part) = (when.Slug("node"), when.SlugOrNull("part"));
        var (below, atMost) = (when.NumberOrNull("below"), when.NumberOrNull("atMost"));
        if (when.Has("below") == when.Has("atMost"))
            binding.Error(when.Pointer, "gate-form", "A gate has either 'below' or 'atMost'.", "Keep one of them.");
        CheckNode(when, node, part);
        return new(node, part, atMost ?? below ?? 0, atMost is not null);
    }

    void CheckNode(ObjectReader when, string id, string? part)
    {
        if (!binding.Nodes.TryGetValue(id, out var found))
        {
            if (id.Length > 0)
                binding.Error(when.Pointer.Child("node"), "node-unknown", "There is no node '{id}'.", Suggestion.Hint(id, binding.Nodes.Keys), ("id", id));
            return;
        }
        var over = found.Node?.Over ?? found.Over;
        if (part is not null && (over is null || !over.Choices.Any(choice => choice.Set.Roles.Any(role => role.Key == part))))
            binding.Error(when.Pointer.Child("part"), "gate-part-unknown", "The node '{id}' is not spread over the role '{part}'.", "Correct the role, or the node.",
                ("id", id), ("part", part));
        if (part is null && found.Over is not null)
            binding.Error(when.Pointer, "gate-part-missing", "The node '{id}' has a value for each part; the gate must say for which.", "Add 'part' with a role.", ("id", id));
    }
}
