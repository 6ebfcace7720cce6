using FixScore.Records;

namespace FixScore.Pairing.Planning;

/// <summary>Between which two whole devices parts are exchanged.</summary>
static class PlanUnits
{
    /// <summary>The host of most trials of the context, else the first device; and the next device of the same model code. <c>null</c> where there is none.</summary>
    public static (AssessedUnit? Host, AssessedUnit? Donor) Of(TeardownRecord record, SwapContext context)
    {
        var devices = record.Assessment.Units.Where(unit => unit.Source.MayBe(UnitSource.Device)).ToArray();
        var trials = record.Swaps.Where(trial => SwapContext.Of(trial) == context).CountBy(trial => trial.Host, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        var host = devices.MaxBy(unit => trials.GetValueOrDefault(unit.Id));
        return (host, devices.FirstOrDefault(unit => unit != host && (unit.ModelCode is null || host!.ModelCode is null || unit.ModelCode == host.ModelCode)));
    }
}
