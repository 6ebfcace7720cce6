using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Cli.Commands.Sheet;
using FixScore.Cli.Files;
using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>A plan of swap trials as JSON.</summary>
static class SwapsPlanJson
{
    const int Digits = 12;

    public static byte[] Of(TeardownRecord record, TrialPlan plan, bool withFixed) => JsonOutput.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("record", record.Id);
        Context(json, plan.Context);
        if (plan.Obstacle is { } obstacle) json.WriteString("obstacle", Word.Of(obstacle));
        Next(json, plan);
        Numbers(json, plan.Plan);
        json.Words("candidates", [.. plan.Candidates.Select(unit => unit.Id)]);
        json.Words("paired", plan.Tied);
        json.Words("cleared", plan.Cleared);
        json.Words("notMovable", [.. plan.NotMovable.Select(unit => unit.Id)]);
        Naive(json, plan.Plan);
        if (plan.Plan is { Start: { } start }) Branch(json, "tree", start);
        if (withFixed && plan.Fixed is { } trials) Fixed(json, trials);
        Assumptions(json, plan);
        json.WriteEndObject();
    });

    static void Context(Utf8JsonWriter json, SwapContext context)
    {
        json.WriteStartObject("context");
        json.WriteString("lockState", context.LockState is { } state ? Word.Of(state) : null);
        json.WriteString("software", context.Software);
        json.WriteString("procedure", context.Procedure is { } procedure ? Word.Of(procedure) : null);
        json.WriteEndObject();
    }

    static void Next(Utf8JsonWriter json, TrialPlan plan)
    {
        if (plan.Plan?.Next() is not { } foreign)
        {
            json.WriteNull("next");
            return;
        }
        json.WriteStartObject("next");
        json.WriteString("host", plan.Host!.Id);
        json.WriteStartObject("installed");
        foreach (var id in foreign) json.WriteString(id, plan.Donor!.Id);
        json.WriteEndObject();
        json.Words("check", plan.Functions);
        json.WriteBoolean("controlMissing", !plan.HasControl);
        json.WriteEndObject();
    }

    static void Numbers(Utf8JsonWriter json, AdaptivePlan? plan)
    {
        json.Exact("expectedTrials", Rounded(plan?.Cost.Trials));
        json.Exact("expectedMinutes", Rounded(plan?.Cost.Minutes));
        json.Exact("trialsAtWorst", plan?.Cost.MostTrials);
        if (plan is null) json.WriteNull("objective");
        else json.WriteString("objective", Word.Of(plan.Objective));
        json.WriteBoolean("optimal", plan?.IsOptimal ?? false);
        json.Exact("bound", Rounded(plan?.Bound));
    }

    static void Naive(Utf8JsonWriter json, AdaptivePlan? plan)
    {
        json.WriteStartObject("naive");
        json.Exact("oneAtATime", Rounded(plan?.OneAtATime.Trials));
        json.Exact("oneAtATimeMinutes", Rounded(plan?.OneAtATime.Minutes));
        json.Exact("allAtOnce", Rounded(plan?.AllAtOnce.Trials));
        json.Exact("allAtOnceMinutes", Rounded(plan?.AllAtOnce.Minutes));
        json.WriteEndObject();
    }

    static void Branch(Utf8JsonWriter json, string name, PlanBranch branch)
    {
        json.WriteStartObject(name);
        json.Words("paired", branch.Tied);
        json.Words("cleared", branch.Cleared);
        json.WriteNumber("open", branch.Open);
        Lists(json, "suspects", branch.Suspects);
        json.Exact("expectedTrials", Rounded(branch.ExpectedTrials));
        if (branch.Next is { } next)
        {
            json.WriteStartObject("next");
            json.Words("foreign", next.Foreign);
            json.Exact("cleanProbability", Rounded(next.CleanProbability));
            Branch(json, "clean", next.OnClean);
            Branch(json, "flagged", next.OnFlagged);
            json.WriteEndObject();
        }
        else json.WriteNull("next");
        json.WriteEndObject();
    }

    static void Fixed(Utf8JsonWriter json, FixedPlan plan)
    {
        json.WriteStartObject("fixed");
        json.WriteNumber("atMost", plan.AtMost);
        Lists(json, "trials", plan.Trials);
        json.Exact("minutes", Rounded(plan.Seconds / 60));
        json.WriteBoolean("optimal", plan.IsOptimal);
        json.WriteNumber("bound", plan.Bound);
        json.Each("outcomes", plan.Outcomes, (writer, outcome) =>
        {
            writer.WriteStartArray("flagged");
            foreach (var flagged in outcome.Flagged) writer.WriteBooleanValue(flagged);
            writer.WriteEndArray();
            writer.Words("paired", outcome.Tied);
        });
        json.WriteEndObject();
    }

    static void Assumptions(Utf8JsonWriter json, TrialPlan plan)
    {
        json.WriteStartObject("assumptions");
        json.WriteString("priors", plan.Priors.About);
        json.WriteStartObject("probabilities");
        foreach (var unit in plan.Candidates) json.Exact(unit.Id, Rounded(unit.Probability));
        json.WriteEndObject();
        json.Exact("atMost", plan.Query.AtMost);
        json.WriteBoolean("reassemblyLikeOpening", plan.AssumesReassembly);
        json.WriteEndObject();
    }

    static void Lists(Utf8JsonWriter json, string name, ImmutableArray<ImmutableArray<string>> lists)
    {
        json.WriteStartArray(name);
        foreach (var list in lists)
        {
            json.WriteStartArray();
            foreach (var id in list) json.WriteStringValue(id);
            json.WriteEndArray();
        }
        json.WriteEndArray();
    }

    static decimal? Rounded(decimal? value) => value is { } known ? decimal.Round(known, Digits) : null;
}
