using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Reading;
using FixScore.Records;

namespace FixScore.Writing;

static class ConditionWriter
{
    public static void Conditions(Utf8JsonWriter json, string name, ImmutableArray<Condition> items)
    {
        if (!items.IsDefaultOrEmpty) Items(json, name, items);
    }

    public static void Items(Utf8JsonWriter json, string name, ImmutableArray<Condition> items)
    {
        json.WriteStartArray(name);
        foreach (var item in items) Item(json, item);
        json.WriteEndArray();
    }

    public static void ToolSets(Utf8JsonWriter json, string name, ImmutableArray<ImmutableArray<string>> sets)
    {
        if (sets.IsDefaultOrEmpty) return;
        json.WriteStartArray(name);
        foreach (var set in sets)
        {
            json.WriteStartArray();
            foreach (var tool in set.OrEmpty()) json.Item(tool);
            json.WriteEndArray();
        }
        json.WriteEndArray();
    }

    static void Item(Utf8JsonWriter json, Condition item)
    {
        if (item is Condition.Done done)
        {
            json.Item(done.Id);
            return;
        }
        json.WriteStartObject();
        Member(json, item);
        json.WriteEndObject();
    }

    static void Member(Utf8JsonWriter json, Condition item)
    {
        switch (item)
        {
            case Condition.Removed removed: json.Required("removed", removed.Part); break;
            case Condition.Away away: json.Required("away", away.Part); break;
            case Condition.Undone undone: json.Required("undone", undone.Joint); break;
            case Condition.AnyOf any: Items(json, "anyOf", any.Items.OrEmpty()); break;
            case Condition.AllOf all: Items(json, "allOf", all.Items.OrEmpty()); break;
        }
    }
}
