using FixScore.Cli.Terminal;

namespace FixScore.Cli.Tests.Support;

/// <summary>What a run left: exit code and texts.</summary>
sealed record Ran(int Code, string Out, string Error)
{
    /// <summary>Both texts as a reader of the terminal finds them.</summary>
    public string All => Error.Length == 0 ? Out : $"{Out}--- standard error, exit {Code}\n{Error}";
}

/// <summary>The command line, run in this process.</summary>
static class Fixscore
{
    public static Ran Run(params string[] arguments) => RunWith(Stream.Null, default, arguments);

    public static Ran RunOn(ReadOnlyMemory<byte> input, params string[] arguments)
    {
        using var stream = new MemoryStream(input.ToArray());
        return RunWith(stream, default, arguments);
    }

    public static Ran RunWith(Stream input, CancellationToken cancellation, params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var code = App.Run(arguments, new Streams(output, error, input), cancellation);
        return new(code, output.ToString(), error.ToString());
    }

    /// <summary>As on a terminal of some width that takes styles.</summary>
    public static Ran RunOnTerminal(int width, params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var code = App.Run(arguments, new Streams(output, error, Stream.Null, Width: width, Styled: true));
        return new(code, output.ToString(), error.ToString());
    }
}
