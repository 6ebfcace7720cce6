using System.Text.Json;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.New;

/// <summary>Writes a profile of all installed criteria.</summary>
static class ProfileTemplate
{
    static readonly Scale Scale = new(0, 100);

    public static byte[] Of(Catalogue catalogue, string id, string date) => JsonOutput.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("format", Profile.Format);
        json.WriteString("id", id);
        json.WriteString("version", "0.1.0");
        json.WriteString("title", "A new profile");
        json.WriteString("status", "draft");
        json.WriteStartObject("source");
        json.WriteString("title", "Whose rules these are: a law, a standard, or your own judgement");
        json.WriteString("locator", "where to find them");
        json.WriteString("date", date);
        json.WriteEndObject();
        json.WriteString("note", "Why the rules are as they are. Weights are relative; points are on the scale; every number is yours to change.");
        json.WriteStartObject("scale");
        json.WriteNumber("min", Scale.Min);
        json.WriteNumber("max", Scale.Max);
        json.WriteNumber("decimals", 1);
        json.WriteString("rounding", "half-up");
        json.WriteEndObject();
        Tree(json, catalogue);
        json.WriteEndObject();
    });

    static void Tree(Utf8JsonWriter json, Catalogue catalogue)
    {
        json.WriteStartObject("partSets");
        json.WriteStartObject("priority");
        json.WriteNumber("battery", 1);
        json.WriteNumber("display-assembly", 1);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteStartObject("root");
        json.WriteString("id", "total");
        json.WriteString("aggregate", "weighted-arithmetic");
        json.WriteStartArray("of");
        foreach (var criterion in catalogue.Criteria) Leaf(json, criterion.Item);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    static void Leaf(Utf8JsonWriter json, ICriterion criterion)
    {
        json.WriteStartObject();
        json.WriteString("id", criterion.Info.Id);
        json.WriteNumber("weight", 1);
        json.WriteString("note", $"Why it weighs what it does. It measures: {criterion.Info.Measures}.");
        json.WriteString("criterion", criterion.Info.Id);
        json.WriteStartObject("options");
        foreach (var (option, value) in OptionValues.DefaultsOf(criterion.Info, Scale).All)
        {
            json.WritePropertyName(option.Name);
            OptionJson.Write(json, option, value);
        }
        json.WriteEndObject();
        if (criterion is IPartCriterion)
        {
            json.WriteStartObject("over");
            json.WriteString("set", "priority");
            json.WriteString("instances", "lowest");
            json.WriteString("absent", "skip");
            json.WriteEndObject();
        }
        json.WriteEndObject();
    }
}
