using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Cli.Files;
using FixScore.Cli.Installed;

namespace FixScore.Cli.Commands.New;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>new record</c>: an empty record, or the next one of a device that was recorded before.</summary>
static class NewRecordCommand
{
    static readonly Option<string?> From = new("--from") { Description = "Start from an older record: parts, joints and tools are kept, what was observed is not.", HelpName = "OLD" };
    static readonly Option<string> Id = new("--id") { Description = "Id of the new record.", HelpName = "ID", DefaultValueFactory = _ => "new-record" };
    static readonly Option<DateOnly> Date = new("--date") { Description = "Day of the assessment; today unless given.", HelpName = "DATE", DefaultValueFactory = _ => Today() };
    static readonly Option<string?> Out = new("--out") { Description = "Write it to this file.", HelpName = "FILE" };

    public static Command Create(Func<ParseResult, CommandSession> session)
    {
        var command = new Command("record", "A teardown record to fill in.") { From, Id, Date, Out };
        command.SetAction(parsed => Run(session(parsed)));
        return command;
    }

    static int Run(CommandSession session)
    {
        var (id, date) = (session.Parsed.GetValue(Id)!, session.Parsed.GetValue(Date).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        var record = session.Parsed.GetValue(From) is { } old ? NextRecord(session, old) : (JsonObject)JsonNode.Parse(Resources.Bytes("new/record.json"))!;
        if (record is null) return ExitCode.InvalidInput;
        record["id"] = id;
        record["assessment"]!["date"] = date;
        var bytes = JsonOutput.Write(json => record.WriteTo(json));
        var result = RecordFile.Read(bytes, session.Catalogue);
        session.Problems.Print("the new record", [.. result.Problems.Where(each => each.Problem.Severity == Severity.Error)]);
        if (!result.IsValid) return ExitCode.InvalidInput;
        session.Write(session.Parsed.GetValue(Out), bytes);
        return ExitCode.Done;
    }

    static JsonObject? NextRecord(CommandSession session, string path)
    {
        var input = session.Read(path);
        var old = RecordFile.Read(input.Bytes, session.Catalogue);
        session.Problems.Print(input.Name, old.Problems);
        if (!old.IsValid) return null;
        var text = input.Bytes.Span.StartsWith("\uFEFF"u8) ? input.Bytes.Span[3..] : input.Bytes.Span;
        return RecordSkeleton.Of((JsonObject)JsonNode.Parse(text)!);
    }

    // The one place where the clock is read: a default for people, not a result.
    static DateOnly Today() => DateOnly.FromDateTime(DateTime.Today);
}
