using System.Text.Json;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Weights.Acceptability;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Compare;

/// <summary>A comparison as JSON.</summary>
static class CompareJson
{
    public static byte[] Of(Compared compared, AcceptabilityOptions options) => JsonOutput.Write(json =>
    {
        var result = compared.Result;
        json.WriteStartObject();
        json.Words("devices", result.Devices);
        json.Words("profiles", result.Profiles);
        Grid(json, "scores", result, (device, profile) => Ends(json, result.Scores[device][profile]));
        Grid(json, "ranks", result, (device, profile) =>
        {
            var rank = result.Ranks[device][profile];
            json.WriteStartObject();
            json.WriteNumber("best", rank.Best);
            json.WriteNumber("worst", rank.Worst);
            json.Exact("middle", rank.Middle);
            json.WriteEndObject();
        });
        json.WriteStartArray("agreement");
        foreach (var pair in result.Pairs) Agreement(json, result, pair);
        json.WriteEndArray();
        json.WriteStartArray("reversals");
        foreach (var pair in result.Pairs) Reversals(json, result, pair);
        json.WriteEndArray();
        json.WriteStartArray("dominance");
        foreach (var pair in result.Dominance.Pairs)
        {
            json.WriteStartObject();
            json.WriteString("over", result.Devices[pair.Over]);
            json.WriteString("under", result.Devices[pair.Under]);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.Words("efficient", [.. result.Dominance.Efficient.Select(unit => result.Devices[unit])]);
        StudyJson.Write(json, compared, options);
        json.WriteStartArray("uncertainty");
        foreach (var spread in compared.Spreads) SpreadJson.Write(json, compared, spread);
        json.WriteEndArray();
        json.WriteEndObject();
    });

    static void Grid(Utf8JsonWriter json, string name, ProfileComparison result, Action<int, int> cell)
    {
        json.WriteStartArray(name);
        for (var device = 0; device < result.Devices.Length; device++)
        {
            json.WriteStartArray();
            for (var profile = 0; profile < result.Profiles.Length; profile++) cell(device, profile);
            json.WriteEndArray();
        }
        json.WriteEndArray();
    }

    static void Ends(Utf8JsonWriter json, Interval value)
    {
        json.WriteStartObject();
        json.Exact("low", value.Low);
        json.Exact("high", value.High);
        json.WriteEndObject();
    }

    static void Agreement(Utf8JsonWriter json, ProfileComparison result, ProfilePair pair)
    {
        json.WriteStartObject();
        json.WriteString("a", result.Profiles[pair.A]);
        json.WriteString("b", result.Profiles[pair.B]);
        Number(json, "kendallTauB", pair.Agreement.TauB);
        Number(json, "spearman", pair.Agreement.Spearman);
        json.Exact("meanShift", pair.Shift.Mean);
        json.Exact("largestShift", pair.Shift.Largest);
        json.WriteEndObject();
    }

    static void Reversals(Utf8JsonWriter json, ProfileComparison result, ProfilePair pair)
    {
        foreach (var reversal in pair.Reversals)
        {
            json.WriteStartObject();
            json.WriteString("first", result.Devices[reversal.First]);
            json.WriteString("second", result.Devices[reversal.Second]);
            json.Words("profiles", [result.Profiles[pair.A], result.Profiles[pair.B]]);
            if (reversal.Cause is { } cause) json.WriteString("cause", cause.Criterion);
            else json.WriteNull("cause");
            json.WriteBoolean("certain", reversal.IsCertain);
            json.WriteEndObject();
        }
    }

    static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } known) json.WriteNumber(name, known);
        else json.WriteNull(name);
    }
}
