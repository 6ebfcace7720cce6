using System.CommandLine;
using System.Text.Json;

namespace FixScore.Cli.Commands.Validate;

/// <summary><c>validate FILE...</c>: problems of records and profiles.</summary>
static class ValidateCommand
{
    static readonly Argument<string[]> Files = new("FILE") { Description = "Records and profiles; - for standard input.", Arity = ArgumentArity.OneOrMore };

    public static Command Create(Func<ParseResult, CommandSession> session)
    {
        var command = new Command("validate", "Says everything that is wrong with records and profiles.") { Files };
        command.SetAction(parsed => Run(session(parsed), parsed.GetValue(Files)!));
        return command;
    }

    static int Run(CommandSession session, string[] files)
    {
        var checks = files.Select(file => Check(session, file)).ToArray();
        if (session.AsJson) session.Write(null, ProblemsJson.Of(checks));
        else Show(session, checks);
        return checks.Any(check => check.HasErrors) ? ExitCode.InvalidInput : ExitCode.Done;
    }

    static CheckedFile Check(CommandSession session, string file)
    {
        var input = session.Read(file);
        return IsProfile(input.Bytes)
            ? new(input.Name, "profile", ProfileFile.Read(input.Bytes, session.Catalogue, session.Library).Problems)
            : new(input.Name, "record", RecordFile.Read(input.Bytes, session.Catalogue).Problems);
    }

    // What calls itself a profile is read as one; everything else as a record, whose reader says what is wrong.
    static bool IsProfile(ReadOnlyMemory<byte> text)
    {
        try
        {
            var reader = new Utf8JsonReader(text.Span, new JsonReaderOptions { MaxDepth = 64 });
            if (text.Span.StartsWith("\uFEFF"u8)) reader = new Utf8JsonReader(text.Span[3..], new JsonReaderOptions { MaxDepth = 64 });
            if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject) return false;
            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                var isFormat = reader.ValueTextEquals("format"u8);
                reader.Read();
                if (isFormat) return reader.TokenType == JsonTokenType.String && reader.GetString()!.StartsWith("fixscore-profile", StringComparison.Ordinal);
                reader.Skip();
            }
        }
        catch (Exception failure) when (failure is JsonException or InvalidOperationException)
        {
            return false;
        }
        return false;
    }

    static void Show(CommandSession session, CheckedFile[] checks)
    {
        foreach (var check in checks)
        {
            session.Problems.Print(check.File, check.Problems);
            session.Canvas.Line($"{check.File}: {check.Summary}");
        }
    }
}
