using System.Collections.Immutable;
using System.Text.Json;

namespace FixScore.Cli.Files;

/// <summary>Forms that JSON documents share: exact numbers without exponent or trailing zeros, ranges, lists of words.</summary>
static class JsonNumbers
{
    public static void Exact(this Utf8JsonWriter json, string name, decimal? value)
    {
        if (value is { } exact) json.WriteNumber(name, Trimmed(exact));
        else json.WriteNull(name);
    }

    /// <summary>A number, or its ends when it is a range; <c>null</c> when unknown.</summary>
    public static void Amount(this Utf8JsonWriter json, string name, Interval? value)
    {
        if (value is not { IsExact: false } range) json.Exact(name, value?.Low);
        else
        {
            json.WriteStartObject(name);
            json.Exact("min", range.Low);
            json.Exact("max", range.High);
            json.WriteEndObject();
        }
    }

    public static void Words(this Utf8JsonWriter json, string name, ImmutableArray<string> words)
    {
        json.WriteStartArray(name);
        foreach (var word in words) json.WriteStringValue(word);
        json.WriteEndArray();
    }

    /// <summary>60.0 becomes 60: dividing by a one with all decimals drops the zeros that a product leaves.</summary>
    public static decimal Trimmed(decimal number) => number / 1.0000000000000000000000000000m;
}
