using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Numbers;

namespace FixScore.Scoring;

/// <summary>Writes the lines of a score document.</summary>
static class NodeWriter
{
    public static void Node(Utf8JsonWriter json, ScoreNode node)
    {
        json.WriteString("id", node.Id);
        json.WriteString("path", node.Path);
        json.WriteString("title", node.Title);
        json.Exact("weight", node.Weight);
        json.Exact("share", node.Share);
        json.Exact("low", node.Value.Low);
        json.Exact("high", node.Value.High);
        json.Interval("shown", node.Shown);
        Contribution(json, node.Contribution);
        json.Exact("headroom", node.Headroom);
        if (node.Criterion is { } criterion) json.Object("criterion", criterion, Criterion);
        if (node.Options is { } options) json.Object("options", options, Options);
        json.List("reasons", node.Reasons, Reason);
        json.List("missing", node.Missing.IsDefault ? [] : node.Missing, Missing);
    }

    static void Contribution(Utf8JsonWriter json, Ends? contribution)
    {
        if (contribution is { } ends) json.Ends("contribution", ends.Low, ends.High);
        else json.WriteNull("contribution");
    }

    static void Criterion(Utf8JsonWriter json, CriterionReference criterion)
    {
        json.WriteString("id", criterion.Id);
        json.WriteNumber("ruleVersion", criterion.RuleVersion);
    }

    static void Reason(Utf8JsonWriter json, ScoreReason reason)
    {
        json.WriteString("code", reason.Code);
        json.Values("values", reason.Values);
        json.WriteString("text", reason.Text);
        json.Texts("pointers", [.. reason.Pointers.Select(pointer => pointer.Text)]);
        if (reason.Points is { } points) json.Interval("points", points);
    }

    static void Missing(Utf8JsonWriter json, Missing missing)
    {
        json.WriteString("pointer", missing.At.Text);
        json.WriteString("what", missing.What);
    }

    // Ordinal by name, like every list of members whose order shows.
    static void Options(Utf8JsonWriter json, OptionValues options)
    {
        foreach (var (option, value) in options.All.OrderBy(pair => pair.Key.Name, StringComparer.Ordinal)) Option(json, option, value);
    }

    static void Option(Utf8JsonWriter json, Option option, object value)
    {
        switch (value)
        {
            case decimal number: json.Exact(option.Name, number); break;
            case int count: json.WriteNumber(option.Name, count); break;
            case bool flag: json.WriteBoolean(option.Name, flag); break;
            case Bands bands: json.List(option.Name, bands.Entries, (writer, band) => Band(writer, bands.Form, band)); break;
            case Levels levels: json.Object(option.Name, levels, Levels); break;
            case ImmutableArray<string> words: json.Texts(option.Name, words); break;
            default: json.WriteString(option.Name, ((IChoiceOption)option).WordOf(value)); break;
        }
    }

    static void Band(Utf8JsonWriter json, BandForm form, Band band)
    {
        json.Exact(form switch { BandForm.AtMost => "atMost", BandForm.AtLeast => "atLeast", _ => "at" }, band.Limit);
        json.Exact("points", band.Points);
    }

    static void Levels(Utf8JsonWriter json, Levels levels)
    {
        foreach (var level in levels.Entries.OrderBy(level => level.Word, StringComparer.Ordinal)) json.Exact(level.Word, level.Points);
    }
}
