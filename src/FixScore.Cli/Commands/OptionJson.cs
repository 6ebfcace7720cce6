using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands;

/// <summary>Values of options as profiles hold them.</summary>
static class OptionJson
{
    public static void Write(Utf8JsonWriter json, Option option, object value)
    {
        switch (value)
        {
            case decimal number: json.WriteNumberValue(JsonNumbers.Trimmed(number)); break;
            case int count: json.WriteNumberValue(count); break;
            case bool flag: json.WriteBooleanValue(flag); break;
            case Bands bands: Bands(json, bands); break;
            case Levels levels: Levels(json, levels); break;
            case ImmutableArray<string> words: Words(json, words); break;
            default: json.WriteStringValue(((IChoiceOption)option).WordOf(value)); break;
        }
    }

    static void Bands(Utf8JsonWriter json, Bands bands)
    {
        json.WriteStartArray();
        foreach (var band in bands.Entries)
        {
            json.WriteStartObject();
            json.WriteNumber(bands.Form switch { BandForm.AtMost => "atMost", BandForm.AtLeast => "atLeast", _ => "at" }, JsonNumbers.Trimmed(band.Limit));
            json.WriteNumber("points", JsonNumbers.Trimmed(band.Points));
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    static void Levels(Utf8JsonWriter json, Levels levels)
    {
        json.WriteStartObject();
        foreach (var level in levels.Entries) json.WriteNumber(level.Word, JsonNumbers.Trimmed(level.Points));
        json.WriteEndObject();
    }

    static void Words(Utf8JsonWriter json, ImmutableArray<string> words)
    {
        json.WriteStartArray();
        foreach (var word in words) json.WriteStringValue(word);
        json.WriteEndArray();
    }
}
