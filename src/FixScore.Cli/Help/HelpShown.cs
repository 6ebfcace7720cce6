using System.CommandLine;
using System.CommandLine.Invocation;
using FixScore.Cli.Terminal;

namespace FixScore.Cli.Help;

/// <summary>What <c>--help</c> does.</summary>
sealed class HelpShown(Streams streams) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        new HelpView(streams).Show(parseResult.CommandResult.Command);
        return ExitCode.Done;
    }
}
