using System.Text.Json;
using FixScore.Cli.Files;
using FixScore.Pairing;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>Trials that settle what is open, ties between parts, and probabilities, as JSON.</summary>
static class SettlingJson
{
    public static void Write(Utf8JsonWriter json, InferredRecord inferred)
    {
        json.WriteStartArray("settle");
        foreach (var trial in inferred.Settling.Trials) Trial(json, trial);
        json.WriteEndArray();
        json.WriteStartArray("pairTies");
        foreach (var context in inferred.Ties.Contexts)
            foreach (var finding in context.Findings)
            {
                json.WriteStartObject();
                json.WriteString("kind", Word.Of(finding.Kind));
                json.WriteString("part", finding.Part);
                json.Words("between", [.. finding.Between.Select(tie => tie.ToString())]);
                json.Words("trials", finding.Trials);
                json.Context(context.Context);
                json.WriteEndObject();
            }
        json.WriteEndArray();
        if (inferred.Posteriors is { } posteriors) Posteriors(json, posteriors);
    }

    static void Trial(Utf8JsonWriter json, SettlingTrial trial)
    {
        json.WriteStartObject();
        json.Words("parts", trial.Parts);
        json.WriteString("host", trial.Host);
        json.WriteString("donor", trial.Donor);
        json.Words("check", trial.Flagged);
        json.WriteBoolean("controlFirst", trial.NeedsControl);
        json.Context(trial.Context);
        json.WriteEndObject();
    }

    static void Posteriors(Utf8JsonWriter json, TiePosteriors posteriors)
    {
        json.WriteStartArray("posterior");
        foreach (var context in posteriors.Contexts)
            foreach (var part in context.Parts)
            {
                json.WriteStartObject();
                json.WriteString("part", part.Part.Id);
                json.Exact("before", part.Before);
                if (part.Probability is { } known) json.WriteNumber("probability", known);
                else json.WriteNull("probability");
                json.WriteNumber("standardError", part.StandardError);
                json.Context(context.Context);
                json.WriteEndObject();
            }
        json.WriteEndArray();
    }
}
