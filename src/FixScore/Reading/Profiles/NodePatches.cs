using System.Text.Json.Nodes;

namespace FixScore.Reading.Profiles;

/// <summary>Patches of nodes by id: each is a merge patch of that node; <c>null</c> removes it.</summary>
static class NodePatches
{
    /// <summary>Applies patches to the tree of a profile, in place; gives what is wrong with them.</summary>
    /// <param name="profile">The profile.</param>
    /// <param name="patches">The patches.</param>
    /// <param name="at">Where the patches stand.</param>
    public static IReadOnlyList<Problem> Apply(JsonObject profile, JsonObject patches, Pointer at)
    {
        var problems = new List<Problem>();
        foreach (var (id, patch) in patches)
        {
            var holder = Holder.Find(profile, id);
            if (Fault(profile, holder, id, patch) is { } fault) problems.Add(fault(at.Child(id)));
            else holder!.Put(patch);
        }
        return problems;
    }

    static Func<Pointer, Problem>? Fault(JsonObject profile, Holder? holder, string id, JsonNode? patch)
    {
        if (holder is null) return at => Error(at, "node-unknown", "There is no node '{id}' to patch.", Suggestion.Hint(id, Holder.Ids(profile)), id);
        if (patch is not (null or JsonObject)) return at => Error(at, "wrong-type", "A patch of '{id}' is an object, or null to remove it.", "Change the value.", id);
        if (patch is null && holder.IsRoot) return at => Error(at, "root-removed", "The root '{id}' cannot be removed.", "Patch what is below it.", id);
        return null;
    }

    static Problem Error(Pointer at, string code, string template, string hint, string id) =>
        Problem.Of(Severity.Error, at, code, template, hint, ("id", id));

    /// <summary>What holds a node: the profile its root, or a group's list one of its elements.</summary>
    sealed record Holder(JsonNode Within, int Index)
    {
        public bool IsRoot => Within is JsonObject;

        public static Holder? Find(JsonObject profile, string id) => All(profile).FirstOrDefault(holder => holder.Id == id);

        public static string[] Ids(JsonObject profile) => [.. All(profile).Select(holder => holder.Id).OfType<string>()];

        public void Put(JsonNode? patch)
        {
            if (Within is JsonObject profile) profile["root"] = MergePatch.Apply(Node, patch);
            else if (patch is null) ((JsonArray)Within).RemoveAt(Index);
            else Within[Index] = MergePatch.Apply(Node, patch);
        }

        JsonNode? Node => Within is JsonObject profile ? profile["root"] : Within[Index];

        string? Id => Node is JsonObject members && members["id"] is JsonValue value && value.TryGetValue<string>(out var id) ? id : null;

        static IEnumerable<Holder> All(JsonObject profile) => new Holder(profile, -1).SelfAndBelow();

        IEnumerable<Holder> SelfAndBelow() =>
            Node is JsonObject group && group["of"] is JsonArray of
                ? Enumerable.Range(0, of.Count).SelectMany(index => new Holder(of, index).SelfAndBelow()).Prepend(this)
                : [this];
    }
}
