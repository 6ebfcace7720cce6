using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Records;

namespace FixScore.Reading.Records;

static class TrialReader
{
    public static SwapTrial Swap(ObjectReader trial) => trial.Entry(new SwapTrial
    {
        Id = trial.Slug("id"),
        Host = trial.Slug("host"),
        Installed = [.. trial.Map("installed", (value, at, reader) => reader.SlugValue(value, at), required: true)
            .Select(pair => new InstalledPart(pair.Key, pair.Value))],
        LockState = trial.WordOrNull<LockState>("lockState"),
        Software = trial.TextOrNull("software"),
        Procedure = trial.WordOrNull<SwapProcedure>("procedure"),
        Checks = Checks(trial),
    });

    public static LockTrial Lock(ObjectReader trial) => trial.Entry(new LockTrial
    {
        Id = trial.Slug("id"),
        Unit = trial.Slug("unit"),
        From = trial.Word<LockState>("from"),
        To = trial.Word<LockState>("to"),
        Outcome = trial.OneOf<LockOutcome>("outcome"),
        WaitDays = trial.Quantity("waitDays"),
        WipesData = trial.FlagOrNull("wipesData"),
        WarrantyNotice = trial.FlagOrNull("warrantyNotice"),
        Losses = trial.Objects("losses", Loss, required: true).OrEmpty(),
    });

    static ImmutableArray<FunctionCheck> Checks(ObjectReader trial)
    {
        var checks = trial.Objects("checks", Check, required: true);
        if (checks is { IsDefault: false, IsEmpty: true } && trial.KindOf("checks") == JsonValueKind.Array)
            trial.Warn("checks", "trial-without-checks", "The trial checks nothing and proves nothing.", "List what was checked.");
        return checks.OrEmpty();
    }

    static FunctionCheck Check(ObjectReader check) => check.Entry(new FunctionCheck
    {
        Function = check.Text("function"),
        Result = check.OneOf<SwapResult>("result", required: true),
        Implicates = check.IdList("implicates"),
    });

    static FunctionLoss Loss(ObjectReader loss) => loss.Entry(new FunctionLoss
    {
        Function = loss.Text("function"),
        Recovers = loss.OneOf<Recovery>("recovers"),
    });
}
