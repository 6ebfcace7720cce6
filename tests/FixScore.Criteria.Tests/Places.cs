namespace FixScore.Criteria.Tests;

/// <summary>The places in a record that the criteria here may point at, counted anew from its lists.</summary>
static class Places
{
    public static IReadOnlyCollection<string> Of(TeardownRecord record) =>
    [
        "",
        .. record.Device.Price is null ? Array.Empty<string>() : ["/device/price"],
        "/device",
        .. In("parts", record.Parts.Count),
        .. In("absent", record.Absent.Count, record.Absent.IsRecorded),
        .. In("joints", record.Joints.Count, record.Joints.IsRecorded),
        .. In("tools", record.Tools.Count, record.Tools.IsRecorded),
        .. In("consumables", record.Consumables.Count, record.Consumables.IsRecorded),
        .. In("operations", record.Operations.Count, record.Operations.IsRecorded),
        .. record.Operations.SelectMany((operation, i) => In($"operations/{i}/outcomes", operation.Outcomes.Length)),
        .. In("sequences", record.Sequences.Count, record.Sequences.IsRecorded),
        .. In("locks", record.Locks.Count, record.Locks.IsRecorded),
        .. record.Locks.SelectMany((trial, i) => In($"locks/{i}/losses", trial.Losses.Length)),
        .. In("documentation", record.Documentation.Count, record.Documentation.IsRecorded),
        .. In("spares", record.Spares.Count, record.Spares.IsRecorded),
        .. record.Support is null ? Array.Empty<string>() : ["/support"],
    ];

    static IEnumerable<string> In(string list, int count, bool recorded = true) =>
        recorded ? [$"/{list}", .. Enumerable.Range(0, count).Select(i => $"/{list}/{i}")] : [];
}
