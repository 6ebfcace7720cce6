using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Reading;
using FixScore.Records;

namespace FixScore.Writing;

static class TrialWriter
{
    public static void Swap(Utf8JsonWriter json, SwapTrial trial)
    {
        json.Required("id", trial.Id);
        json.Required("host", trial.Host);
        json.Object("installed", trial.Installed.OrEmpty(), Installed);
        json.Word("lockState", trial.LockState);
        json.Text("software", trial.Software);
        json.Word("procedure", trial.Procedure);
        json.Objects("checks", trial.Checks, Check);
        json.Remarks(trial);
    }

    public static void Lock(Utf8JsonWriter json, LockTrial trial)
    {
        json.Required("id", trial.Id);
        json.Required("unit", trial.Unit);
        json.Word<LockState>("from", trial.From);
        json.Word<LockState>("to", trial.To);
        json.OneOf("outcome", trial.Outcome);
        json.Quantity("waitDays", trial.WaitDays);
        json.Flag("wipesData", trial.WipesData);
        json.Flag("warrantyNotice", trial.WarrantyNotice);
        json.Objects("losses", trial.Losses, Loss);
        json.Remarks(trial);
    }

    static void Installed(Utf8JsonWriter json, ImmutableArray<InstalledPart> installed)
    {
        foreach (var (part, unit) in installed) json.Required(part, unit);
    }

    static void Check(Utf8JsonWriter json, FunctionCheck check)
    {
        json.Required("function", check.Function);
        json.AnyOf("result", check.Result);
        json.Ids("implicates", check.Implicates);
        json.Remarks(check);
    }

    static void Loss(Utf8JsonWriter json, FunctionLoss loss)
    {
        json.Required("function", loss.Function);
        json.OneOf("recovers", loss.Recovers);
        json.Remarks(loss);
    }
}
