using System.Text.Json.Nodes;

namespace FixScore.Tests;

/// <summary>Damage to a text that leaves it JSON.</summary>
static class Damage
{
    // Removes a value, puts another one of the same text or a null in its place, or renames a member.
    public static void ChangeMember(JsonNode root, int kind, int at, int other)
    {
        var all = Below(root).ToArray();
        var (chosen, donor) = (all[at % all.Length], all[other % all.Length]);
        if (chosen.Parent is JsonObject members) Change(members, chosen.GetPropertyName(), kind, donor);
        else if (chosen.Parent is JsonArray items && kind == 0) items.Remove(chosen);
        else if (chosen.Parent is JsonArray list) list[chosen.GetElementIndex()] = kind == 1 ? donor.DeepClone() : null;
    }

    static void Change(JsonObject members, string name, int kind, JsonNode donor)
    {
        switch (kind)
        {
            case 0: members.Remove(name); break;
            case 1: members[name] = donor.DeepClone(); break;
            case 2: members[name] = null; break;
            default: members[name + "s"] = members[name]?.DeepClone(); break;
        }
    }

    static IEnumerable<JsonNode> Below(JsonNode node)
    {
        var children = node switch { JsonObject members => members.Select(member => member.Value), JsonArray items => items, _ => [] };
        return children.OfType<JsonNode>().SelectMany(child => Below(child).Prepend(child));
    }
}
