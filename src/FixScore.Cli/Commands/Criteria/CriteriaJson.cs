using System.Text.Json;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Criteria;

/// <summary>Criteria as JSON.</summary>
static class CriteriaJson
{
    static readonly Scale Example = new(0, 100);

    public static byte[] Of(Catalogue catalogue) => JsonOutput.Write(json =>
    {
        json.WriteStartObject();
        json.WriteStartObject("pointsOfDefaultsAreOn");
        Bounds(json, Example.Min, Example.Max);
        json.WriteEndObject();
        json.WriteStartArray("criteria");
        foreach (var criterion in catalogue.Criteria) Criterion(json, criterion);
        json.WriteEndArray();
        json.WriteEndObject();
    });

    static void Criterion(Utf8JsonWriter json, Installed<ICriterion> criterion)
    {
        var info = criterion.Item.Info;
        json.WriteStartObject();
        json.WriteString("id", info.Id);
        json.WriteNumber("ruleVersion", info.RuleVersion);
        json.WriteString("title", info.Title);
        json.WriteString("judges", criterion.Item is IPartCriterion ? "part" : "device");
        json.WriteString("measures", info.Measures);
        json.WriteString("unit", info.Unit);
        json.WriteString("direction", Word.Of(info.Direction));
        json.WriteString("source", info.Source);
        json.WriteString("plugin", criterion.Plugin.Id);
        json.WriteStartArray("reads");
        foreach (var member in info.Reads) json.WriteStringValue(member);
        json.WriteEndArray();
        json.WriteStartArray("options");
        foreach (var (option, value) in OptionValues.DefaultsOf(info, Example).All) Option(json, option, value);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    static void Option(Utf8JsonWriter json, Option option, object value)
    {
        json.WriteStartObject();
        json.WriteString("name", option.Name);
        json.WriteString("kind", KindOf(option));
        json.WriteString("text", option.Text);
        if (option.Unit is { } unit) json.WriteString("unit", unit);
        if (option is NumberOption number) Bounds(json, number.Min, number.Max);
        if (option is CountOption count) Bounds(json, count.Min, count.Max);
        if (option is IChoiceOption choice) Words(json, choice.Words);
        if (option is LevelsOption levels) Words(json, levels.Words);
        json.WritePropertyName("default");
        OptionJson.Write(json, option, value);
        json.WriteEndObject();
    }

    static void Bounds(Utf8JsonWriter json, decimal min, decimal max)
    {
        json.WriteNumber("min", min);
        json.WriteNumber("max", max);
    }

    static void Words(Utf8JsonWriter json, IEnumerable<string> words)
    {
        json.WriteStartArray("words");
        foreach (var word in words) json.WriteStringValue(word);
        json.WriteEndArray();
    }

    static string KindOf(Option option) => option switch
    {
        NumberOption => "number",
        CountOption => "count",
        FlagOption => "flag",
        BandsOption => "bands",
        LevelsOption => "levels",
        WordsOption => "words",
        _ => "choice",
    };
}
