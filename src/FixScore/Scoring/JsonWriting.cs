using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Numbers;

namespace FixScore.Scoring;

/// <summary>The few forms of which score documents are made.</summary>
static class JsonWriting
{
    public static void Exact(this Utf8JsonWriter json, string name, decimal? value)
    {
        if (value is { } exact) json.WriteString(name, PlainText.Of(exact));
        else json.WriteNull(name);
    }

    public static void Ends(this Utf8JsonWriter json, string name, decimal low, decimal high)
    {
        json.WriteStartObject(name);
        json.Exact("low", low);
        json.Exact("high", high);
        json.WriteEndObject();
    }

    public static void Interval(this Utf8JsonWriter json, string name, Interval value) => json.Ends(name, value.Low, value.High);

    public static void Class(this Utf8JsonWriter json, string name, ClassRange value) => json.Object(name, value, static (json, range) =>
    {
        json.WriteString("low", range.Low);
        json.WriteString("high", range.High);
    });

    public static void Object<T>(this Utf8JsonWriter json, string name, T value, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartObject(name);
        write(json, value);
        json.WriteEndObject();
    }

    public static void List<T>(this Utf8JsonWriter json, string name, ImmutableArray<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(json, item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    public static void Texts(this Utf8JsonWriter json, string name, ImmutableArray<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    /// <summary>Named facts, ordinal by name: numbers and words as text, flags as such, numbers with a unit and ranges as objects.</summary>
    public static void Values(this Utf8JsonWriter json, string name, ImmutableArray<NamedValue> values)
    {
        json.WriteStartObject(name);
        foreach (var value in values.OrderBy(value => value.Name, StringComparer.Ordinal)) json.Value(value.Name, value.Value);
        json.WriteEndObject();
    }

    static void Value(this Utf8JsonWriter json, string name, Value value)
    {
        switch (value.Kind)
        {
            case ValueKind.Word: json.WriteString(name, value.Text); break;
            case ValueKind.Flag: json.WriteBoolean(name, value.Number.Low == 1m); break;
            case ValueKind.Number when value.Unit is null: json.Exact(name, value.Number.Low); break;
            default: json.Object(name, value, Measured); break;
        }
    }

    static void Measured(Utf8JsonWriter json, Value value)
    {
        if (value.Kind == ValueKind.Number) json.Exact("value", value.Number.Low);
        else json.Bounds(value.Number);
        if (value.Unit is not null) json.WriteString("unit", value.Unit);
    }

    static void Bounds(this Utf8JsonWriter json, Interval bounds)
    {
        json.Exact("low", bounds.Low);
        json.Exact("high", bounds.High);
    }
}
