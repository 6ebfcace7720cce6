using System.Text.Json;
using FixScore.Cli.Files;
using FixScore.Pairing;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>Comparisons of contexts as JSON.</summary>
static class ComparisonJson
{
    public static void Write(Utf8JsonWriter json, ContextComparison comparison)
    {
        json.WriteStartArray("comparisons");
        foreach (var each in comparison.Functions) Function(json, each);
        foreach (var each in comparison.Parts) Part(json, each);
        json.WriteEndArray();
    }

    static void Function(Utf8JsonWriter json, ComparedFunction compared)
    {
        json.WriteStartObject();
        json.WriteString("by", Word.Of(compared.By));
        json.Words("parts", compared.Parts);
        json.WriteString("function", compared.Function);
        Side(json, "first", compared.First);
        Side(json, "second", compared.Second);
        json.WriteString("fares", Word.Of(compared.Fares));
        json.WriteBoolean("comparable", compared.IsComparable);
        json.Finding(compared.Finding);
        json.WriteEndObject();
    }

    static void Side(Utf8JsonWriter json, string name, ComparedSide side)
    {
        json.WriteStartObject(name);
        json.WriteString("what", side.What);
        json.Observed("result", side.Result);
        json.WriteEndObject();
    }

    static void Part(Utf8JsonWriter json, PartAfterProcedure after)
    {
        json.WriteStartObject();
        json.WriteString("by", Word.Of(ComparedBy.Procedure));
        json.Words("parts", [after.Part.Id]);
        json.WriteString("verdict", Word.Of(after.Verdict));
        json.Finding(after.Finding);
        json.WriteEndObject();
    }
}
