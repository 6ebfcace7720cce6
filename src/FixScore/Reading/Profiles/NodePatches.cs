using System.Text.Json.Nodes;

namespace FixScore.Reading.Profiles;

/// <summary>Patches of nodes by id: each is a merge patch of that node; <c>null</c> removes it.</summary>
static class NodePatches
{
    /// <summary>Applies patches to the tree of a profile, in place; gives the ids that name no node.</summary>
    public static IReadOnlyList<string> Apply(JsonObject profile, JsonObject patches)
    {
        var unknown = new List<string>();
        foreach (var (id, patch) in patches)
        {
            if (Holder.Find(profile, id) is not { } holder) unknown.Add(id);
            else holder.Put(patch);
        }
        return unknown;
    }

    /// <summary>What holds a node: the profile its root, or a group's list one of its elements.</summary>
    sealed record Holder(JsonNode Within, int Index)
    {
        public static Holder? Find(JsonObject profile, string id) =>
            profile["root"] is JsonObject root && IdOf(root) == id ? new(profile, -1) : Below(profile["root"], id);

        public void Put(JsonNode? patch)
        {
            if (Within is JsonObject profile) profile["root"] = MergePatch.Apply(profile["root"], patch);
            else if (patch is null) ((JsonArray)Within).RemoveAt(Index);
            else Within[Index] = MergePatch.Apply(Within[Index], patch);
        }

        static Holder? Below(JsonNode? node, string id)
        {
            if (node is not JsonObject group || group["of"] is not JsonArray of) return null;
            for (var i = 0; i < of.Count; i++)
            {
                if (IdOf(of[i]) == id) return new(of, i);
                if (Below(of[i], id) is { } found) return found;
            }
            return null;
        }

        static string? IdOf(JsonNode? node) =>
            node is JsonObject { } members && members["id"] is JsonValue value && value.TryGetValue<string>(out var id) ? id : null;
    }
}
