using System.Text.Json.Nodes;
using FixScore.Cli.Files;
using FixScore.Cli.Installed;

namespace FixScore.Cli.Commands.New;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>new record</c>: a first record, or the next one of a device that was recorded before.</summary>
sealed class NewRecordCommand : AppCommand
{
    readonly Option<string?> from = new("--from") { Description = "Start from an older record: how the device is built is kept, what was observed on the bench is not.", HelpName = "OLD" };
    readonly Option<string> id = new("--id") { Description = "Id of the new record.", HelpName = "ID", DefaultValueFactory = _ => "new-record" };
    readonly Option<DateOnly> date = DateOption.Of("--date", "Day of the assessment; today unless given.");
    readonly Option<string?> @out = new("--out") { Description = "Write it to this file.", HelpName = "FILE" };

    public NewRecordCommand() : base("record", "A teardown record to fill in.", "new record --id slate-4 --out slate-4.json", "new record --from slate-3.json --id slate-4 --date 2026-05-01")
    {
        foreach (var option in (Option[])[from, id, date, @out]) Add(option);
    }

    public override int Run(CommandSession session)
    {
        var record = session.Parsed.GetValue(from) is { } old ? NextRecord(session, old) : (JsonObject)JsonNode.Parse(Resources.Bytes("new/record.json"))!;
        if (record is null) return ExitCode.InvalidInput;
        record["id"] = session.Parsed.GetValue(id);
        record["assessment"]!["date"] = DateOption.Text(session.Parsed.GetValue(date));
        var bytes = JsonOutput.Write(json => record.WriteTo(json));
        var result = session.CheckRecord(new("the new record", bytes));
        session.Problems.Print("the new record", [.. result.Problems.Where(each => each.Problem.Severity == Severity.Error)]);
        if (!result.IsValid) return ExitCode.InvalidInput;
        session.Write(session.Parsed.GetValue(@out), bytes);
        return ExitCode.Done;
    }

    static JsonObject? NextRecord(CommandSession session, string path)
    {
        var input = session.Read(path);
        var old = session.CheckRecord(input);
        session.Problems.Print(input.Name, old.Problems);
        return old.IsValid ? RecordSkeleton.Of((JsonObject)JsonNode.Parse(input.WithoutMark.Span)!) : null;
    }
}
