using System.Text;

namespace FixScore.Cli.Terminal;

/// <summary>Where text comes from and goes to, and what the terminal can do.</summary>
/// <param name="Out">Standard output.</param>
/// <param name="Error">Standard error.</param>
/// <param name="In">Standard input, as bytes.</param>
/// <param name="RawOut">Standard output, as bytes; <c>null</c> to write them as text.</param>
/// <param name="Width">Characters in a line.</param>
/// <param name="Styled">Whether standard output takes colours and weights.</param>
/// <param name="ErrorIsTerminal">Whether standard error is looked at as it comes.</param>
sealed record Streams(TextWriter Out, TextWriter Error, Stream In, Stream? RawOut = null, int Width = 80, bool Styled = false, bool ErrorIsTerminal = false)
{
    public static Streams OfConsole()
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        var raw = Console.OpenStandardOutput();
        var plain = Console.IsOutputRedirected;
        return new(
            new StreamWriter(raw, utf8) { AutoFlush = true, NewLine = "\n" },
            new StreamWriter(Console.OpenStandardError(), utf8) { AutoFlush = true, NewLine = "\n" },
            StandardInput.Open(), raw,
            plain ? 80 : Math.Clamp(WindowWidth(), 40, 160),
            !plain && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")) && Environment.GetEnvironmentVariable("TERM") != "dumb",
            !Console.IsErrorRedirected);
    }

    public void WriteBytes(byte[] bytes)
    {
        if (RawOut is null) Out.Write(Encoding.UTF8.GetString(bytes));
        else
        {
            Out.Flush();
            RawOut.Write(bytes);
            RawOut.Flush();
        }
    }

    static int WindowWidth()
    {
        try
        {
            return Console.WindowWidth is > 0 and var width ? width : 80;
        }
        catch (IOException)
        {
            return 80;
        }
    }
}
