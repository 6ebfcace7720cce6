using System.Text.Json;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Weights;
using FixScore.Analysis.Weights.Acceptability;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Compare;

/// <summary>What weights do to a ranking, as JSON.</summary>
static class StudyJson
{
    public static void Write(Utf8JsonWriter json, Compared compared, AcceptabilityOptions options)
    {
        json.WriteStartObject("acceptability");
        foreach (var study in compared.Studies) Acceptability(json, study);
        json.WriteEndObject();
        json.WriteStartArray("stability");
        foreach (var study in compared.Studies)
            foreach (var weight in study.Stability) Stability(json, study, weight);
        json.WriteEndArray();
        json.WriteStartArray("sensitivity");
        foreach (var study in compared.Studies.Where(study => study.Sensitivity is not null)) Sensitivity(json, study);
        json.WriteEndArray();
        json.WriteNumber("draws", options.Draws);
        json.WriteNumber("seed", options.Seed);
    }

    static void Acceptability(Utf8JsonWriter json, WeightStudy study)
    {
        json.WriteStartObject(study.Name);
        for (var unit = 0; unit < study.Table.Units.Length; unit++)
        {
            json.WriteStartArray(study.Table.Units[unit]);
            for (var place = 1; place <= study.Table.Units.Length; place++) json.WriteNumberValue(study.Share(unit, place));
            json.WriteEndArray();
        }
        json.WriteEndObject();
    }

    static void Sensitivity(Utf8JsonWriter json, WeightStudy study)
    {
        foreach (var (input, index) in study.Sensitivity!.Inputs.Zip(study.Sensitivity.Indices.Inputs))
        {
            json.WriteStartObject();
            json.WriteString("profile", study.Name);
            json.WriteString("input", input.Name);
            json.WriteString("kind", Word.Of(input.Kind));
            json.WriteNumber("ways", input.Ways);
            json.WriteNumber("first", index.First);
            json.WriteNumber("firstError", index.FirstError);
            json.WriteNumber("total", index.Total);
            json.WriteNumber("totalError", index.TotalError);
            json.WriteEndObject();
        }
    }

    static void Stability(Utf8JsonWriter json, WeightStudy study, WeightStability weight)
    {
        json.WriteStartObject();
        json.WriteString("profile", study.Name);
        json.WriteString("criterion", study.Table.Criteria[weight.Criterion]);
        json.WriteString("share", weight.Share.ToString());
        Ends(json, "winner", weight.Winner);
        Ends(json, "order", weight.Order);
        json.WriteEndObject();
    }

    static void Ends(Utf8JsonWriter json, string name, StabilityInterval ends)
    {
        json.WriteStartObject(name);
        json.WriteString("low", ends.Low.ToString());
        json.WriteString("high", ends.High.ToString());
        json.WriteEndObject();
    }
}
