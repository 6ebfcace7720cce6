using System.Text.Json;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Verify;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>verify SCORE --record RECORD</c>: recomputes a score with what is installed.</summary>
static class VerifyCommand
{
    static readonly Argument<string> ScoreFile = new("SCORE") { Description = "A score document; - for standard input." };
    static readonly Option<string> RecordOption = new("--record") { Description = "The record it judges.", HelpName = "RECORD", Required = true };
    static readonly Option<string?> ProfileOption = new("--profile") { Description = "The profile, when it is not installed.", HelpName = "FILE" };
    static readonly Option<bool> Strict = new("--strict") { Description = "Demand that every byte that counts and every text is the same." };

    public static Command Create(Func<ParseResult, CommandSession> session)
    {
        var command = new Command("verify", "Recomputes a score document and names the first difference.") { ScoreFile, RecordOption, ProfileOption, Strict };
        command.SetAction(parsed => Run(session(parsed)));
        return command;
    }

    static int Run(CommandSession session)
    {
        var input = session.Read(session.Parsed.GetValue(ScoreFile)!);
        using var document = ParseScore(input);
        var given = document.RootElement;
        var record = session.ReadRecord(session.Parsed.GetValue(RecordOption)!);
        var profile = session.ReadProfile(session.Parsed.GetValue(ProfileOption) ?? ProfileOf(given, input.Name));
        if (record is null || profile is null) return ExitCode.InvalidInput;
        var mode = given.TryGetProperty("mode", out var word) && word.ValueEquals("tolerant") ? ScoringMode.Tolerant : ScoringMode.Strict;
        if (ProfileMismatchException.For(record.Record.Device, profile) is { } mismatch)
        {
            session.Problems.Print(session.Parsed.GetValue(RecordOption)!, mismatch.Problem);
            return ExitCode.InvalidInput;
        }
        var verification = Verifier.Compare(given, Scorer.Score(record, profile, mode, session.Cancellation));
        new VerifyView(session).Show(verification, Verifier.HasOwnDigest(given));
        var isFine = verification.Verdict == Verdict.Identical || verification.Verdict == Verdict.Equal && !session.Parsed.GetValue(Strict);
        return isFine ? ExitCode.Done : ExitCode.Difference;
    }

    static JsonDocument ParseScore(Input input)
    {
        try
        {
            var document = JsonDocument.Parse(input.Bytes.Span.StartsWith("\uFEFF"u8) ? input.Bytes[3..] : input.Bytes, new() { MaxDepth = 64 });
            if (document.RootElement.ValueKind == JsonValueKind.Object
                && document.RootElement.TryGetProperty("format", out var format) && format.ValueKind == JsonValueKind.String && format.ValueEquals(ScoreDocument.Format))
                return document;
            document.Dispose();
        }
        catch (JsonException)
        {
            // Said below: whatever is wrong with it, it is no score document.
        }
        throw new InputException(input.Name, "not-a-score", "is not a score document of the format fixscore-score/1", "Give the file that 'fixscore score --out' wrote.");
    }

    static string ProfileOf(JsonElement score, string name)
    {
        if (score.TryGetProperty("profile", out var profile) && profile.ValueKind == JsonValueKind.Object
            && profile.TryGetProperty("id", out var id) && id.ValueKind == JsonValueKind.String
            && profile.TryGetProperty("version", out var version) && version.ValueKind == JsonValueKind.String)
            return $"{id.GetString()}@{version.GetString()}";
        throw new InputException(name, "not-a-score", "does not name its profile", "Give the profile with --profile.");
    }
}
