using System.Text.Json;

namespace FixScore.Reading.Profiles;

/// <summary>Moves problems of a resolved profile to where its author can mend them: the text itself, its patch of a node, or <c>extends</c>.</summary>
sealed class OwnPlaces(JsonElement own, ProfileBinding binding)
{
    readonly JsonElement patches = own.ValueKind == JsonValueKind.Object && own.TryGetProperty("nodes", out var nodes) ? nodes : default;

    public Problem Move(Problem problem)
    {
        if (own.ValueKind != JsonValueKind.Object || !own.TryGetProperty("extends", out _)) return problem;
        if (Removed(problem) is { } lost && Exact(lost) is { } removal) return Moved(problem, removal);
        if (IsThere(problem.At)) return problem;
        return Moved(problem, PatchPlaces.Nearest(problem.At, patches, PatchesAt, binding) ?? Pointer.Root.Child("extends"));
    }

    static Pointer PatchesAt => Pointer.Root.Child("nodes");

    // What is missed may be what the text itself removed.
    static Pointer? Removed(Problem problem) => problem.Code switch
    {
        "missing-member" => problem.At.Child(NameIn(problem)),
        "part-set-unknown" => Pointer.Root.Child("partSets").Child(NameIn(problem)),
        "node-unknown" => PatchesAt.Child(NameIn(problem)),
        _ => null,
    };

    static string NameIn(Problem problem) => problem.Why.Values[0].Value.Text;

    Pointer? Exact(Pointer at) => IsThere(at) ? at : PatchPlaces.Exact(at, patches, PatchesAt, binding);

    bool IsThere(Pointer at) => at.Text.Length > 0 && JsonPointers.Resolve(own, at.Text) is not null;

    static Problem Moved(Problem problem, Pointer to) =>
        to == problem.At ? problem : problem with { At = to, Hint = $"{problem.Hint} In the resolved profile it stands at {Shown(problem.At)}." };

    static string Shown(Pointer at) => at.Text.Length == 0 ? "the top" : at.Text;
}
