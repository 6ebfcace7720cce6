using System.Globalization;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.New;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>new profile</c>: all installed criteria with equal weights, their options written out.</summary>
static class NewProfileCommand
{
    static readonly Option<string> Id = new("--id") { Description = "Id of the new profile.", HelpName = "ID", DefaultValueFactory = _ => "new-profile" };
    static readonly Option<DateOnly> Date = new("--date") { Description = "Date of its source; today unless given.", HelpName = "DATE", DefaultValueFactory = _ => DateOnly.FromDateTime(DateTime.Today) };
    static readonly Option<string?> Out = new("--out") { Description = "Write it to this file.", HelpName = "FILE" };

    public static Command Create(Func<ParseResult, CommandSession> session)
    {
        var command = new Command("profile", "A profile to change: every installed criterion with equal weight, all options written out.") { Id, Date, Out };
        command.SetAction(parsed => Run(session(parsed)));
        return command;
    }

    static int Run(CommandSession session)
    {
        var date = session.Parsed.GetValue(Date).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var bytes = ProfileTemplate.Of(session.Catalogue, session.Parsed.GetValue(Id)!, date);
        var result = ProfileFile.Read(bytes, session.Catalogue);
        session.Problems.Print("the new profile", result.Problems);
        if (!result.IsValid) return ExitCode.InvalidInput;
        session.Write(session.Parsed.GetValue(Out), bytes);
        return ExitCode.Done;
    }
}
