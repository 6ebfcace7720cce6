using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;
using FixScore.Cli.Terminal;

namespace FixScore.Cli.Help;

/// <summary>What <c>--version</c> does: the version of this program, whatever process it runs in.</summary>
sealed class VersionShown(Streams streams) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        streams.Out.WriteLine(typeof(VersionShown).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion);
        return ExitCode.Done;
    }
}
