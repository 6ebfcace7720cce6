using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using FixScore.Numbers;
using FixScore.Records;

namespace FixScore.Writing;

/// <summary>Writes members of one object. What is unknown is left out; what is required is written even when it is wrong, so that reading tells.</summary>
static class JsonMembers
{
    public static void Text(this Utf8JsonWriter json, string name, string? text)
    {
        if (text is not null) json.WriteString(name, text);
    }

    public static void Flag(this Utf8JsonWriter json, string name, bool? flag)
    {
        if (flag is { } known) json.WriteBoolean(name, known);
    }

    public static void Date(this Utf8JsonWriter json, string name, DateOnly? date) =>
        json.Text(name, date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    public static void Timecode(this Utf8JsonWriter json, string name, TimeSpan time) =>
        json.WriteString(name, string.Create(CultureInfo.InvariantCulture, $"{(long)time.TotalHours}:{time.Minutes:00}:{time.Seconds:00}"));

    public static void Quantity(this Utf8JsonWriter json, string name, Quantity? quantity)
    {
        if (quantity is { IsExact: true, Min: { } exact }) json.WriteNumber(name, Decimals.Trim(exact));
        else if (quantity is { } range) json.Object(name, range, Range);
    }

    public static void Word<T>(this Utf8JsonWriter json, string name, T? word) where T : struct, Enum
    {
        if (word is { } known) json.WriteString(name, FixScore.Word.Of(known));
    }

    public static void OneOf<T>(this Utf8JsonWriter json, string name, OneOf<T> words) where T : struct, Enum =>
        json.OneOf(name, new OneOf<string>([.. words.Stated.Select(FixScore.Word.Of)]));

    public static void OneOf(this Utf8JsonWriter json, string name, OneOf<string> words)
    {
        if (words.IsExact) json.WriteString(name, words.Stated[0]);
        else if (!words.IsUnknown) json.Texts(name, words.Stated);
    }

    public static void Words<T>(this Utf8JsonWriter json, string name, EntryList<T> words) where T : struct, Enum
    {
        if (words.IsRecorded) json.Texts(name, words.Select(FixScore.Word.Of));
    }

    /// <summary>A list of ids that means the same when it is empty and when it is left out.</summary>
    public static void Ids(this Utf8JsonWriter json, string name, ImmutableArray<string> ids)
    {
        if (!ids.IsDefaultOrEmpty) json.Texts(name, ids);
    }

    /// <summary>A list of ids that says something when it is empty.</summary>
    public static void Ids(this Utf8JsonWriter json, string name, EntryList<string> ids)
    {
        if (ids.IsRecorded) json.Texts(name, ids);
    }

    public static void Texts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    static void Range(Utf8JsonWriter json, Quantity range)
    {
        if (range.Min is { } min) json.WriteNumber("min", Decimals.Trim(min));
        if (range.Max is { } max) json.WriteNumber("max", Decimals.Trim(max));
    }
}
