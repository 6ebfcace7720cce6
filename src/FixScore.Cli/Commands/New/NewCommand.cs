using System.CommandLine;

namespace FixScore.Cli.Commands.New;

/// <summary><c>new record</c> and <c>new profile</c>: valid starting points.</summary>
static class NewCommand
{
    public static Command Create(Func<ParseResult, CommandSession> session)
    {
        var command = new Command("new", "Prints a valid starting point that says what each part asks for.");
        command.Subcommands.Add(NewRecordCommand.Create(session));
        command.Subcommands.Add(NewProfileCommand.Create(session));
        return command;
    }
}
