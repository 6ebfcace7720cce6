using System.Text.Json;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Validate;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>validate FILE...</c>: problems of records and profiles.</summary>
sealed class ValidateCommand : AppCommand
{
    readonly Argument<string[]> files = new("FILE") { Description = "Records and profiles; - for standard input.", Arity = ArgumentArity.OneOrMore };

    public ValidateCommand() : base("validate", "Says everything that is wrong with records and profiles.", "validate slate-3.json my-profile.json", "validate - --json < slate-3.json") => Add(files);

    public override int Run(CommandSession session)
    {
        var checks = session.Parsed.GetValue(files)!.Select(file => Check(session, file)).ToArray();
        new ValidateView(session).Show(checks);
        return checks.Any(check => check.HasErrors) ? ExitCode.InvalidInput : ExitCode.Done;
    }

    // A file that cannot be read is a problem among others: the rest is looked at all the same.
    static CheckedFile Check(CommandSession session, string file)
    {
        try
        {
            var input = session.Read(file);
            return IsProfile(input.WithoutMark.Span)
                ? new(input.Name, "profile", ProfileFile.Read(input.Bytes, session.Catalogue, session.Library).Problems)
                : new(input.Name, "record", session.CheckRecord(input).Problems);
        }
        catch (InputException failure)
        {
            return new(failure.Name, "file", [new(Problem.Of(Severity.Error, Pointer.Root, failure.Code, failure.Sentence, failure.Hint), 0, 0)]);
        }
    }

    // What calls itself a profile is read as one; everything else as a record, whose reader says what is wrong.
    static bool IsProfile(ReadOnlySpan<byte> text)
    {
        try
        {
            var reader = new Utf8JsonReader(text);
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
}
