using System.CommandLine;
using System.CommandLine.Parsing;
using FixScore.Cli.Terminal;

namespace FixScore.Cli.Help;

/// <summary>Says what is wrong with a command line and what was probably meant.</summary>
static class UsageProblems
{
    // Who asks for help or the version gets it, whatever else stands there.
    public static bool AreIn(ParseResult parsed) =>
        parsed.Action is not (HelpShown or VersionShown) && (parsed.Errors.Count > 0 || Misspelt(parsed).Any());

    public static void Show(ParseResult parsed, Streams streams)
    {
        if (NamesNoCommand(parsed)) new HelpView(streams with { Out = streams.Error, Styled = false }).Show(parsed.CommandResult.Command);
        else
        {
            foreach (var message in Messages(parsed).Distinct()) streams.Error.WriteLine(Plain.Text(message, 1000));
            streams.Error.WriteLine($"  '{HelpView.PathOf(parsed.CommandResult.Command)} --help' tells what is possible.");
        }
    }

    static bool NamesNoCommand(ParseResult parsed) => parsed.CommandResult.Command.Subcommands.Count > 0 && parsed.UnmatchedTokens.Count == 0;

    static IEnumerable<string> Messages(ParseResult parsed)
    {
        var misspelt = Misspelt(parsed).ToArray();
        if (misspelt.Length > 0) return misspelt.Select(word => Unknown("option", word, OptionsOf(parsed.CommandResult.Command)));
        var command = parsed.CommandResult.Command;
        return parsed.UnmatchedTokens.Count > 0 && command.Subcommands.Count > 0
            ? [Unknown("command", parsed.UnmatchedTokens[0], command.Subcommands.Select(each => each.Name))]
            : parsed.Errors.Select(error => error.Message);
    }

    static string Unknown(string what, string word, IEnumerable<string> known) =>
        $"There is no {what} '{word}'.{(Suggestion.For(word, known) is { } near ? $" Did you mean '{near}'?" : "")}";

    // The parser takes an unknown option for a file name where any number of files may stand. After -- it is one.
    static IEnumerable<string> Misspelt(ParseResult parsed) => parsed.Tokens
        .TakeWhile(token => token.Type != TokenType.DoubleDash)
        .Where(token => token.Type == TokenType.Argument && token.Value.StartsWith("--", StringComparison.Ordinal))
        .Select(token => token.Value);

    static IEnumerable<string> OptionsOf(Command command) =>
        command.Options.Concat(command.Parents.OfType<Command>().SelectMany(parent => parent.Options.Where(option => option.Recursive)))
            .Select(option => option.Name).Where(name => name.StartsWith("--", StringComparison.Ordinal));
}
