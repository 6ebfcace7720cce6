using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Records;

namespace FixScore.Writing;

/// <summary>Writes objects and lists of them.</summary>
static class JsonObjects
{
    public static void Object<T>(this Utf8JsonWriter json, string name, T? value, Action<Utf8JsonWriter, T> write)
    {
        if (value is null) return;
        json.WritePropertyName(name);
        json.Object(value, write);
    }

    /// <summary>A list at the top of a record: left out when not recorded.</summary>
    public static void Entries<T>(this Utf8JsonWriter json, string name, EntryList<T> entries, Action<Utf8JsonWriter, T> write)
    {
        if (entries.IsRecorded) json.Objects(name, entries.AsArray(), write);
    }

    /// <summary>A list inside an entry: left out when empty.</summary>
    public static void Entries<T>(this Utf8JsonWriter json, string name, ImmutableArray<T> entries, Action<Utf8JsonWriter, T> write)
    {
        if (!entries.IsDefaultOrEmpty) json.Objects(name, entries, write);
    }

    /// <summary>A list that is always there.</summary>
    public static void Objects<T>(this Utf8JsonWriter json, string name, ImmutableArray<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items.IsDefault ? [] : items) json.Object(item, write);
        json.WriteEndArray();
    }

    /// <summary>What every entry of a list may carry; comes last.</summary>
    public static void Remarks(this Utf8JsonWriter json, RecordEntry entry)
    {
        json.Text("note", entry.Note);
        json.Ids("evidence", entry.Evidence);
    }

    static void Object<T>(this Utf8JsonWriter json, T value, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartObject();
        write(json, value);
        json.WriteEndObject();
    }
}
