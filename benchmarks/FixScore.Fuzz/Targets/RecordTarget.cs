using FixScore.Fuzz.Findings;

namespace FixScore.Fuzz.Targets;

/// <summary>Records: read with all that is installed, scored, written and read again, and handed to commands.</summary>
sealed class RecordTarget : Target
{
    // Proving routes takes what the device asks, up to a limit of its own: seconds for the largest demo record as it is.
    const int LongestForRoutes = 16 << 10;

    static readonly string[][] Commands =
    [
        ["route", "-", "--json"], ["route", "-", "--classes"], ["sheet", "-"], ["requirements", "-", "--json"], ["swaps", "infer", "-"], ["swaps", "plan", "-", "--json"],
        ["score", "-", "--profile", "bench-balanced", "--explain"], ["score", "-", "--profile", "eu-2023-1669", "--json"], ["score", "-", "--ndjson", "--profile", "bench-limiting"],
    ];

    public override string Name => "record";

    public override byte[][] Seeds => Fuzz.Seeds.Records;

    public override void Try(byte[] input, int share, Traces traces)
    {
        var result = RecordFile.Read(input, Fuzz.Seeds.Installed.Catalogue);
        ProblemCheck.Read(result, input, traces);
        if (share % 64 == 0) Commandline.Run(input, ["validate", "-", .. share % 128 == 0 ? (string[])["--json"] : []]);
        if (result.Value is not { } record) return;
        if (share % 4 == 1) ScoreCheck.Score(record, Fuzz.Seeds.ForAll[share / 4 % Fuzz.Seeds.ForAll.Length], traces);
        if (share % 16 == 2) Written(record);
        if (share % 64 == 3 && input.Length <= LongestForRoutes) Commandline.Run(input, Commands[share / 64 % Commands.Length]);
    }

    static void Written(RecordDocument record)
    {
        var written = RecordFile.ToJson(record.Record);
        var again = RecordFile.Read(written, Fuzz.Seeds.Installed.Catalogue);
        FaultException.Unless(again.IsValid, "A record that was read cannot be read again as it was written.");
        FaultException.Unless(RecordFile.ToJson(again.Value!.Record).AsSpan().SequenceEqual(written), "A record is written in another way after it was read again.");
    }
}
