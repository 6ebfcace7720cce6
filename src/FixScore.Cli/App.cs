using System.CommandLine;
using System.CommandLine.Parsing;
using FixScore.Cli.Help;
using FixScore.Cli.Terminal;

namespace FixScore.Cli;

/// <summary>Parses the command line, runs one command, turns what can go wrong into an exit code. No global state.</summary>
static class App
{
    // Words that begin with @ are file names like others, not files of arguments.
    static readonly ParserConfiguration Parsing = new() { ResponseFileTokenReplacer = null };

    public static int Run(string[] args, Streams streams, CancellationToken cancellation = default) => Failures.Guard(streams, () =>
    {
        var parsed = CommandLine.Build(streams, cancellation).Parse(args, Parsing);
        if (AsksForSuggestions(parsed)) return Invoke(parsed, streams);
        if (!UsageProblems.AreIn(parsed)) return Invoke(parsed, streams);
        UsageProblems.Show(parsed, streams);
        return ExitCode.Usage;
    });

    static int Invoke(ParseResult parsed, Streams streams) => parsed.Invoke(new InvocationConfiguration
    {
        Output = streams.Out, Error = streams.Error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null,
    });

    static bool AsksForSuggestions(ParseResult parsed) => parsed.Tokens.Any(token => token.Type == TokenType.Directive);
}
