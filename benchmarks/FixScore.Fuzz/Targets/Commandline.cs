using FixScore.Cli;
using FixScore.Cli.Terminal;
using FixScore.Fuzz.Findings;

namespace FixScore.Fuzz.Targets;

/// <summary>The tool, run in this process on an input.</summary>
static class Commandline
{
    public static void Run(byte[] input, string[] arguments)
    {
        using var stream = new MemoryStream(input);
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = App.Run(arguments, new Streams(output, error, stream));
        FaultException.Unless(code is ExitCode.Done or ExitCode.Difference or ExitCode.InvalidInput, $"'{string.Join(' ', arguments)}' ends with {code}: {error}");
        FaultException.Unless(code != ExitCode.InvalidInput || error.GetStringBuilder().Length > 0 || output.GetStringBuilder().Length > 0, "Input is refused in silence.");
    }
}
