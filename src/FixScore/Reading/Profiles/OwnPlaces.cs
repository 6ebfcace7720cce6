using System.Text.Json;

namespace FixScore.Reading.Profiles;

/// <summary>Moves problems of a resolved profile to where its author can mend them: the text itself, its patch of a node, or <c>extends</c>.</summary>
static class OwnPlaces
{
    public static Problem Move(Problem problem, JsonElement own, ProfileBinding binding)
    {
        if (own.ValueKind != JsonValueKind.Object || !own.TryGetProperty("extends", out _) || IsThere(own, problem.At)) return problem;
        var at = Patch(problem.At, own, binding) ?? Pointer.Root.Child("extends");
        return problem with { At = at, Hint = $"{problem.Hint} In the resolved profile it stands at {problem.At}." };
    }

    static Pointer? Patch(Pointer at, JsonElement own, ProfileBinding binding)
    {
        var node = binding.Nodes
            .Where(pair => IsWithin(at, pair.Value.At))
            .MaxBy(pair => pair.Value.At.Text.Length);
        if (node.Key is null) return null;
        var patch = Pointer.Root.Child("nodes").Child(node.Key);
        var exact = new Pointer(patch.Text + at.Text[node.Value.At.Text.Length..]);
        return IsThere(own, exact) ? exact : IsThere(own, patch) ? patch : null;
    }

    static bool IsWithin(Pointer at, Pointer node) =>
        at.Text == node.Text || at.Text.StartsWith(node.Text + "/", StringComparison.Ordinal);

    static bool IsThere(JsonElement own, Pointer at) => at.Text.Length > 0 && JsonPointers.Resolve(own, at.Text) is not null;
}
