using System.CommandLine.Parsing;
using FixScore.Cli.Commands;
using FixScore.Cli.Terminal;

namespace FixScore.Cli;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary>Parses the command line, runs one command, turns what can go wrong into an exit code. No global state.</summary>
static class App
{
    public static int Run(string[] args, Streams streams, CancellationToken cancellation = default)
    {
        var parsed = CommandLine.Build(streams, cancellation).Parse(args);
        if (parsed.Errors.Count > 0 && parsed.CommandResult.Command is not null && !AsksForSuggestions(parsed)) return Usage(parsed, streams);
        var configuration = new InvocationConfiguration { Output = streams.Out, Error = streams.Error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null };
        return Failures.Guard(streams, () => parsed.Invoke(configuration));
    }

    static bool AsksForSuggestions(ParseResult parsed) => parsed.Tokens.Any(token => token.Type == TokenType.Directive);

    static int Usage(ParseResult parsed, Streams streams)
    {
        foreach (var error in parsed.Errors) streams.Error.WriteLine(error.Message);
        foreach (var token in parsed.UnmatchedTokens)
            if (Nearest(token, parsed.CommandResult.Command) is { } near) streams.Error.WriteLine($"Did you mean '{near}'?");
        streams.Error.WriteLine($"'{PathOf(parsed.CommandResult)} --help' tells what is possible.");
        return ExitCode.Usage;
    }

    static string PathOf(CommandResult result) =>
        result.Parent is CommandResult parent ? $"{PathOf(parent)} {result.Command.Name}" : "fixscore";

    static string? Nearest(string token, Command command) => Suggestions.Nearest(token,
        command.Subcommands.Select(each => each.Name).Concat(command.Options.Concat(command.Parents.OfType<Command>().SelectMany(parent => parent.Options)).Select(option => option.Name)));
}
