using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;
using System.Text.Json;
using FixScore.Numbers;
using FixScore.Records;

namespace FixScore.Writing;

/// <summary>Writes members of one object. What is unknown is left out; what is required is written even when it is wrong, so that reading tells.</summary>
static class JsonMembers
{
    // The writer itself would put another character in the place of half a surrogate pair.
    static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public static void Required(this Utf8JsonWriter json, string name, string? text) => json.WriteString(Sound(name), Sound(text));

    public static void Text(this Utf8JsonWriter json, string name, string? text)
    {
        if (text is not null) json.Required(name, text);
    }

    public static void Item(this Utf8JsonWriter json, string? text) => json.WriteStringValue(Sound(text));

    public static void Flag(this Utf8JsonWriter json, string name, bool? flag)
    {
        if (flag is { } known) json.WriteBoolean(name, known);
    }

    public static void Date(this Utf8JsonWriter json, string name, DateOnly? date) =>
        json.Text(name, date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    public static void Timecode(this Utf8JsonWriter json, string name, TimeSpan time) =>
        json.Required(name, string.Create(CultureInfo.InvariantCulture, $"{(long)time.TotalHours}:{time.Minutes:00}:{time.Seconds:00}"));

    public static void Quantity(this Utf8JsonWriter json, string name, Quantity? quantity)
    {
        if (quantity is { IsExact: true, Min: { } exact }) json.WriteNumber(name, Decimals.Trim(exact));
        else if (quantity is { } range) json.Object(name, range, Range);
    }

    public static void Word<T>(this Utf8JsonWriter json, string name, T? word) where T : struct, Enum
    {
        if (word is { } known) json.Required(name, FixScore.Word.Of(known));
    }

    public static void OneOf<T>(this Utf8JsonWriter json, string name, OneOf<T> words) where T : struct, Enum =>
        json.OneOf(name, new OneOf<string>([.. words.Stated.Select(FixScore.Word.Of)]));

    /// <summary>A word that the format asks for: when it is not known it can be any of the list.</summary>
    public static void AnyOf<T>(this Utf8JsonWriter json, string name, OneOf<T> words) where T : struct, Enum =>
        json.OneOf(name, new OneOf<T>(words.Possible()));

    public static void OneOf(this Utf8JsonWriter json, string name, OneOf<string> words)
    {
        if (words.IsExact) json.Required(name, words.Stated[0]);
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
        foreach (var text in texts) json.Item(text);
        json.WriteEndArray();
    }

    [return: NotNullIfNotNull(nameof(text))]
    static string? Sound(string? text)
    {
        if (text is not null) Strict.GetByteCount(text);
        return text;
    }

    static void Range(Utf8JsonWriter json, Quantity range)
    {
        if (range.Min is { } min) json.WriteNumber("min", Decimals.Trim(min));
        if (range.Max is { } max) json.WriteNumber("max", Decimals.Trim(max));
    }
}
