using System.Text.Json.Nodes;

namespace FixScore.Analysis.Generations;

/// <summary>Gives entries of an old record the ids that their like has in the new one, wherever they are named.</summary>
/// <remarks>
/// Two entries are taken for one only when, of all that have no counterpart by id, just one on each side is like that: parts by
/// role; joints by kind and the parts they join, then by the parts alone; tools and consumables by name; operations by action and
/// what they undo, remove and move, then by what they undo, remove and move alone; locks by the states they lead from and to.
/// </remarks>
sealed class Renaming
{
    // Members that hold ids; words such as roles can look the same.
    static readonly HashSet<string> Naming = new(StringComparer.Ordinal)
    {
        "id", "on", "part", "parts", "joins", "under", "undoes", "moves", "holdsBy", "removes", "damages", "after", "directlyAfter", "when", "anyOf", "allOf", "removed", "away", "undone",
        "tools", "orTools", "consumes", "operations", "implicates", "suppliedWith", "onlyBundledWith", "fastenersIncluded", "about",
    };

    readonly JsonObject old, @new;
    readonly HashSet<string> taken;
    readonly SortedDictionary<string, string> renamed = new(StringComparer.Ordinal);

    Renaming(JsonObject old, JsonObject @new)
    {
        (this.old, this.@new) = (old, @new);
        taken = [.. old.Select(list => list.Key).SelectMany(list => Entries(old, list)).Select(Id)];
    }

    /// <summary>Renames in place; gives the old id of every new one that differs.</summary>
    public static IReadOnlyDictionary<string, string> Apply(JsonObject old, JsonObject @new)
    {
        var renaming = new Renaming(old, @new);
        renaming.Match("parts", entry => Text(entry["role"]));
        renaming.Match("joints", entry => $"{Text(entry["kind"])} {Set(entry["joins"])}");
        renaming.Match("joints", entry => Set(entry["joins"]));
        renaming.Match("tools", entry => Text(entry["name"]));
        renaming.Match("consumables", entry => Text(entry["name"]));
        renaming.Match("operations", entry => Effect(entry) is { } effect ? $"{Text(entry["action"])} {effect}" : null);
        renaming.Match("operations", Effect);
        renaming.Match("locks", entry => $"{Text(entry["from"])} {Text(entry["to"])}");
        return renaming.renamed;
    }

    void Match(string list, Func<JsonObject, string?> likeness)
    {
        var (before, after) = (Entries(old, list), Entries(@new, list));
        var (oldIds, newIds) = (before.Select(Id).ToHashSet(StringComparer.Ordinal), after.Select(Id).ToHashSet(StringComparer.Ordinal));
        var left = before.Where(entry => !newIds.Contains(Id(entry))).ToLookup(likeness);
        var pairs = after.Where(entry => !oldIds.Contains(Id(entry))).GroupBy(likeness)
            .Where(alike => alike.Key is not null && alike.Count() == 1 && left[alike.Key].Count() == 1).Select(alike => (Old: Id(left[alike.Key].Single()), New: Id(alike.Single())))
            .Where(pair => taken.Add(pair.New)).ToArray();
        foreach (var pair in pairs) renamed[pair.New] = pair.Old;
        Rename(old, pairs.ToDictionary(pair => pair.Old, pair => pair.New, StringComparer.Ordinal), false);
    }

    static void Rename(JsonNode? node, Dictionary<string, string> names, bool isNaming)
    {
        if (node is JsonObject entry)
            foreach (var (name, value) in entry.ToArray())
            {
                if (value is JsonValue && Naming.Contains(name) && NewName(value, names) is { } own) entry[name] = own;
                else Rename(value, names, Naming.Contains(name));
            }
        if (node is not JsonArray list) return;
        for (var i = 0; i < list.Count; i++)
        {
            if (isNaming && list[i] is JsonValue item && NewName(item, names) is { } own) list[i] = own;
            else Rename(list[i], names, isNaming);
        }
    }

    static string? NewName(JsonNode value, Dictionary<string, string> names) =>
        value.GetValueKind() == System.Text.Json.JsonValueKind.String ? names.GetValueOrDefault(value.GetValue<string>()) : null;

    static JsonObject[] Entries(JsonObject record, string list) => [.. (record[list] as JsonArray)?.OfType<JsonObject>() ?? []];

    // What brings nothing about is like everything else that does not: no sign of being the same.
    static string? Effect(JsonObject entry) => entry["undoes"] is null && entry["removes"] is null && entry["moves"] is null
        ? null
        : $"{Set(entry["undoes"])} {Set(entry["removes"])} {Set(entry["moves"])}";

    static string Id(JsonObject entry) => entry["id"]?.GetValue<string>() ?? "";

    static string Text(JsonNode? node) => node is null ? "" : node.ToJsonString();

    static string Set(JsonNode? node) => node is JsonArray list ? string.Join(' ', list.Select(Text).Order(StringComparer.Ordinal)) : Text(node);
}
