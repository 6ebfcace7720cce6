using System.Text.Json;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Compare;

/// <summary>How one score can be off, as JSON.</summary>
static class SpreadJson
{
    static readonly (string Name, decimal Share)[] Quantiles = [("0.05", 0.05m), ("0.25", 0.25m), ("0.5", 0.5m), ("0.75", 0.75m), ("0.95", 0.95m)];

    public static void Write(Utf8JsonWriter json, Compared compared, Spread spread)
    {
        var uncertainty = spread.Uncertainty;
        json.WriteStartObject();
        json.WriteString("device", compared.Result.Devices[spread.Device]);
        json.WriteString("profile", compared.Result.Profiles[spread.Profile]);
        json.WriteStartObject("quantiles");
        foreach (var (name, share) in Quantiles) json.Exact(name, uncertainty.Quantile(share));
        json.WriteEndObject();
        json.Exact("mean", uncertainty.Mean);
        json.WriteStartObject("classes");
        foreach (var each in uncertainty.Classes) json.Exact(each.Label, each.Share);
        json.WriteEndObject();
        json.WriteStartArray("open");
        foreach (var line in uncertainty.Open) Line(json, line);
        json.WriteEndArray();
        json.WriteStartObject("readings");
        json.Exact("low", uncertainty.Readings.Low);
        json.Exact("high", uncertainty.Readings.High);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    static void Line(Utf8JsonWriter json, Analysis.Uncertainty.OpenLine line)
    {
        json.WriteStartObject();
        json.WriteString("path", line.Path);
        json.Exact("gain", line.Gain);
        json.Words("missing", [.. line.Missing.Select(each => each.At.Text)]);
        json.WriteEndObject();
    }
}
