using FixScore.Cli.Terminal;

namespace FixScore.Cli.Help;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary>Help of a command: how it is called, what it does, what it takes, examples.</summary>
sealed class HelpView(Streams streams)
{
    readonly Canvas canvas = new(streams);

    public static string PathOf(Command command) =>
        command.Parents.OfType<Command>().FirstOrDefault() is { } parent ? $"{PathOf(parent)} {command.Name}" : CommandLine.Name;

    public void Show(Command command)
    {
        canvas.Heading(Usage(command));
        canvas.Line(command.Description ?? "");
        Section("", command.Arguments.Select(argument => (argument.Name, argument.Description)));
        Section("Commands", command.Subcommands.Select(each => (each.Name, each.Description)));
        Section("Options", command.Options.Where(option => !option.Recursive).Select(Row));
        Section("Everywhere", Everywhere(command).Select(Row));
        if (command is not AppCommand { Examples: { Count: > 0 } examples }) return;
        canvas.Line();
        canvas.Heading("Examples");
        foreach (var example in examples) canvas.Code($"  {CommandLine.Name} {example}");
    }

    static IEnumerable<Option> Everywhere(Command command) =>
        command.Options.Where(option => option.Recursive).Concat(command.Parents.OfType<Command>().SelectMany(Everywhere));

    void Section(string title, IEnumerable<(string Term, string? Text)> rows)
    {
        var all = rows.ToArray();
        if (all.Length == 0) return;
        canvas.Line();
        if (title.Length > 0) canvas.Heading(title);
        canvas.Terms(all.Select(row => (row.Term, row.Text ?? "")));
    }

    static (string, string?) Row(Option option) => (Term(option), option.Description);

    static string Term(Option option) => option.HelpName is { } value ? $"{option.Name} {value}" : option.Name;

    static string Usage(Command command)
    {
        var required = command.Options.Where(option => option.Required).Select(Term);
        var options = command.Options.Any(option => !option.Required && !option.Recursive) ? (string[])["[options]"] : [];
        return string.Join(' ', [PathOf(command), .. command.Subcommands.Count > 0 ? (string[])["COMMAND"] : [], .. command.Arguments.Select(Usage), .. required, .. options]);
    }

    static string Usage(Argument argument) => argument.Arity.MaximumNumberOfValues > 1 ? $"{argument.Name}..." : argument.Name;
}
