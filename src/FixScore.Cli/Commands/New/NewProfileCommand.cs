namespace FixScore.Cli.Commands.New;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>new profile</c>: all installed criteria with equal weights, their options written out.</summary>
sealed class NewProfileCommand : AppCommand
{
    readonly Option<string> id = new("--id") { Description = "Id of the new profile.", HelpName = "ID", DefaultValueFactory = _ => "new-profile" };
    readonly Option<DateOnly> date = DateOption.Of("--date", "Date of its source; today unless given.");
    readonly Option<string?> @out = new("--out") { Description = "Write it to this file.", HelpName = "FILE" };

    public NewProfileCommand() : base("profile", "A profile to change: every installed criterion with equal weight, all options written out.", "new profile --id school-tender --out school-tender.json")
    {
        Add(id);
        Add(date);
        Add(@out);
    }

    public override int Run(CommandSession session)
    {
        var bytes = ProfileTemplate.Of(session.Catalogue, session.Parsed.GetValue(id)!, DateOption.Text(session.Parsed.GetValue(date)));
        var result = ProfileFile.Read(bytes, session.Catalogue);
        session.Problems.Print("the new profile", result.Problems);
        if (!result.IsValid) return ExitCode.InvalidInput;
        session.Write(session.Parsed.GetValue(@out), bytes);
        return ExitCode.Done;
    }
}
