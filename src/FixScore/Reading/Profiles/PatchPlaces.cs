using System.Text.Json;

namespace FixScore.Reading.Profiles;

/// <summary>Finds where, in patches of nodes, something in the patched profile comes from.</summary>
static class PatchPlaces
{
    /// <summary>The very place in a patch.</summary>
    /// <param name="place">The place in the patched profile.</param>
    /// <param name="patches">The patches.</param>
    /// <param name="at">Where the patches stand.</param>
    /// <param name="binding">Knows where the nodes are.</param>
    public static Pointer? Exact(Pointer place, JsonElement patches, Pointer at, ProfileBinding binding) =>
        FirstThere(Around(place, binding).Select(node => node.Name + node.Way), patches, at);

    /// <summary>The very place, or the patch of the innermost node around it.</summary>
    public static Pointer? Nearest(Pointer place, JsonElement patches, Pointer at, ProfileBinding binding) =>
        Exact(place, patches, at, binding)
        ?? FirstThere(Around(place, binding).Select(node => node.Name), patches, at);

    // Nodes around a place, innermost first: the name of each as a step, and the way from it to the place.
    static IEnumerable<(string Name, string Way)> Around(Pointer place, ProfileBinding binding) =>
        from node in binding.Nodes
        let at = node.Value.At.Text
        where place.Text == at || place.Text.StartsWith(at + "/", StringComparison.Ordinal)
        orderby at.Length descending
        select (Pointer.Root.Child(node.Key).Text, place.Text[at.Length..]);

    static Pointer? FirstThere(IEnumerable<string> paths, JsonElement patches, Pointer at) =>
        paths.FirstOrDefault(path => JsonPointers.Resolve(patches, path) is not null) is { } path ? new(at.Text + path) : null;
}
