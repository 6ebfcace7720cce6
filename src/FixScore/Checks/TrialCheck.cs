using FixScore.Records;

namespace FixScore.Checks;

/// <summary>Swap trials that could not have happened, or that compare what is not comparable.</summary>
static class TrialCheck
{
    public static IEnumerable<Problem> Check(CheckedRecord record) =>
        record.Record.Swaps.SelectMany(trial => Host(record, trial)
            .Concat(trial.Installed.SelectMany(pair => Installed(record, trial, pair)))
            .Concat(Groups(record, trial))
            .Concat(Boards(record, trial))
            .Concat(Checks(record, trial)));

    static IEnumerable<Problem> Host(CheckedRecord record, SwapTrial trial)
    {
        var source = record.Find<AssessedUnit>(trial.Host)?.Source ?? default;
        if (!source.IsUnknown && !source.MayBe(UnitSource.Device))
            yield return Problem.Of(Severity.Error, record.At(trial).Child("host"), "swap-host-is-spare",
                "The host '{host}' is a loose spare.", "The host is the device that parts are put into.", ("host", trial.Host));
    }

    static IEnumerable<Problem> Installed(CheckedRecord record, SwapTrial trial, InstalledPart pair)
    {
        var at = record.At(trial).Child("installed").Child(pair.Part);
        if (pair.Unit == trial.Host)
            yield return Problem.Of(Severity.Error, at, "swap-from-host",
                "'{part}' is put into the unit it comes from.", "Leave out what stays in the host.", ("part", pair.Part));
        var (host, source) = (record.Find<AssessedUnit>(trial.Host)?.ModelCode, record.Find<AssessedUnit>(pair.Unit)?.ModelCode);
        if (host is not null && source is not null && host != source)
            yield return Problem.Of(Severity.Warning, at, "swap-across-model-codes",
                "The units have different model codes: {host} and {source}.", "Such units are not comparable; the trial counts all the same.",
                ("host", host), ("source", source));
    }

    static IEnumerable<Problem> Groups(CheckedRecord record, SwapTrial trial) =>
        from pair in trial.Installed
        where record.Find<Part>(pair.Part) is not null
        let twin = trial.Installed.FirstOrDefault(other => other.Unit != pair.Unit && record.Groups.Of(pair.Part).Holds(other.Part))
        where twin is not null && string.CompareOrdinal(twin.Part, pair.Part) < 0
        select Problem.Of(Severity.Error, record.At(trial).Child("installed").Child(pair.Part), "swap-splits-group",
            "'{part}' and '{twin}' cannot be separated, yet come from different units.", "Name one of them, or correct the units.",
            ("part", pair.Part), ("twin", twin.Part));

    static IEnumerable<Problem> Boards(CheckedRecord record, SwapTrial trial)
    {
        var boards = trial.Installed.Where(pair => record.Find<Part>(pair.Part)?.Role == Roles.Mainboard).ToArray();
        return from board in boards.Skip(1)
               where board.Unit != boards[0].Unit
               select Problem.Of(Severity.Error, record.At(trial).Child("installed").Child(board.Part), "swap-two-boards",
                   "Main boards of different units are in one trial.", "Take them from one unit, or make two trials.");
    }

    static IEnumerable<Problem> Checks(CheckedRecord record, SwapTrial trial)
    {
        if (trial.Checks.IsEmpty)
            yield return Problem.Of(Severity.Warning, record.At(trial).Child("checks"), "trial-without-checks",
                "The trial '{trial}' checks nothing and proves nothing.", "List what was checked.", ("trial", trial.Id));
    }
}
