namespace FixScore.Cli.Commands.New;

/// <summary><c>new record</c> and <c>new profile</c>: valid starting points.</summary>
sealed class NewCommand : AppCommand
{
    public NewCommand() : base("new", "Prints a valid starting point that says what each part asks for.")
    {
        Add(new NewRecordCommand());
        Add(new NewProfileCommand());
    }
}
