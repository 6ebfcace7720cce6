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
            .Concat(ModelCodes(record, trial))
            .Concat(Untested(record, trial)));

    static IEnumerable<Problem> Host(CheckedRecord record, SwapTrial trial)
    {
        var source = record.Find<AssessedUnit>(trial.Host)?.Source ?? default;
        if (!source.IsUnknown && !source.MayBe(UnitSource.Device))
            yield return Problem.Of(Severity.Error, record.At(trial).Child("host"), "swap-host-is-spare",
                "The host '{host}' is a loose spare.", "The host is the device that parts are put into.", ("host", trial.Host));
    }

    static IEnumerable<Problem> Installed(CheckedRecord record, SwapTrial trial, InstalledPart pair)
    {
        if (pair.Unit == trial.Host)
            yield return Problem.Of(Severity.Error, record.At(trial).Child("installed").Child(pair.Part), "swap-from-host",
                "'{part}' is put into the unit it comes from.", "Leave out what stays in the host.", ("part", pair.Part));
    }

    static IEnumerable<Problem> Groups(CheckedRecord record, SwapTrial trial) =>
        from same in Named(record, trial)
        from pair in same.Skip(1)
        let twin = same.First()
        where pair.Unit != twin.Unit
        select Problem.Of(Severity.Error, record.At(trial).Child("installed").Child(pair.Part), "swap-splits-group",
            "'{part}' and '{twin}' cannot be separated, yet come from different units.", "Name one of them, or correct the units.",
            ("part", pair.Part), ("twin", twin.Part));

    // A part named brings along its group, and with it a main board.
    static IEnumerable<Problem> Boards(CheckedRecord record, SwapTrial trial)
    {
        var boards = Named(record, trial).Where(same => record.BoardGroups.Contains(same.Key)).Select(same => same.First()).ToArray();
        return from board in boards.Skip(1)
               where board.Unit != boards[0].Unit
               select Problem.Of(Severity.Error, record.At(trial).Child("installed").Child(board.Part), "swap-two-boards",
                   "Main boards of different units are in one trial.", "Take them from one unit, or make two trials.");
    }

    static IEnumerable<IGrouping<string, InstalledPart>> Named(CheckedRecord record, SwapTrial trial) =>
        trial.Installed.Where(pair => record.Find<Part>(pair.Part) is not null).GroupBy(pair => record.GroupOf(pair.Part), StringComparer.Ordinal);

    static IEnumerable<Problem> ModelCodes(CheckedRecord record, SwapTrial trial)
    {
        var units = trial.Installed.Select(pair => pair.Unit).Prepend(trial.Host);
        var codes = units.Select(unit => record.Find<AssessedUnit>(unit)?.ModelCode).OfType<string>().Distinct(StringComparer.Ordinal).ToArray();
        if (codes.Length > 1)
            yield return Problem.Of(Severity.Warning, record.At(trial), "swap-across-model-codes",
                "The units of '{trial}' have different model codes: {codes}.", "Such units are not comparable; the trial counts all the same.",
                ("trial", trial.Id), ("codes", string.Join(", ", codes)));
    }

    // A trial without any check is told when it is read.
    static IEnumerable<Problem> Untested(CheckedRecord record, SwapTrial trial)
    {
        if (!trial.Checks.IsEmpty && trial.Checks.All(check => check.Result.Is(SwapResult.Untested)))
            yield return Problem.Of(Severity.Warning, record.At(trial).Child("checks"), "trial-untested",
                "Every check of '{trial}' is untested, so it proves nothing.", "Say how a function behaved, or leave the trial out.", ("trial", trial.Id));
    }
}
