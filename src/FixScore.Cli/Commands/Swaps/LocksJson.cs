using System.Text.Json;
using FixScore.Cli.Files;
using FixScore.Pairing;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>What the boot lock costs as JSON.</summary>
static class LocksJson
{
    public static void Write(Utf8JsonWriter json, LockCosts costs)
    {
        json.WriteStartObject("locks");
        json.WriteStartArray("trials");
        foreach (var cost in costs.Trials) Trial(json, cost);
        json.WriteEndArray();
        json.Findings("contradictions", costs.Contradictions);
        json.Findings("doubts", costs.Doubts);
        json.WriteEndObject();
    }

    static void Trial(Utf8JsonWriter json, LockCost cost)
    {
        json.WriteStartObject();
        json.WriteString("trial", cost.Trial.Id);
        json.WriteString("unit", cost.Trial.Unit);
        json.WriteString("from", Word.Of(cost.Trial.From));
        json.WriteString("to", Word.Of(cost.Trial.To));
        json.Observed("outcome", cost.Trial.Outcome);
        json.Observed("waitDays", cost.Trial.WaitDays);
        json.Flag("wipesData", cost.Trial.WipesData);
        json.Flag("warrantyNotice", cost.Trial.WarrantyNotice);
        json.WriteStartArray("losses");
        foreach (var lost in cost.Losses) Loss(json, lost);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    static void Loss(Utf8JsonWriter json, LostFunction lost)
    {
        json.WriteStartObject();
        json.WriteString("function", lost.Loss.Function);
        json.Observed("recovers", lost.Loss.Recovers);
        json.WriteString("afterRelock", Word.Of(lost.AfterRelock));
        json.Words("seenIn", lost.SeenIn);
        json.WriteBoolean("contradicted", lost.IsContradicted);
        json.WriteEndObject();
    }
}
