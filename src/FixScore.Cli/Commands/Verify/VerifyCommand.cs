using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Verify;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>verify SCORE --record RECORD</c>: recomputes a score with what is installed.</summary>
sealed class VerifyCommand : AppCommand
{
    readonly Argument<string> scoreFile = new("SCORE") { Description = "A score document; - for standard input." };
    readonly Option<string> recordFile = new("--record") { Description = "The record it judges.", HelpName = "RECORD", Required = true };
    readonly Option<string?> profileFile = new("--profile") { Description = "The profile, when it is not installed.", HelpName = "FILE" };
    readonly Option<bool> strict = new("--strict") { Description = "Demand that versions and texts are the same as well." };

    public VerifyCommand() : base("verify", "Recomputes a score document and names the first difference.", "verify slate-3.score.json --record slate-3.json")
    {
        Add(scoreFile);
        foreach (var option in (Option[])[recordFile, profileFile, strict]) Add(option);
    }

    public override int Run(CommandSession session)
    {
        using var given = GivenScore.Parse(session.Read(session.Parsed.GetValue(scoreFile)!));
        var recordName = session.Parsed.GetValue(recordFile)!;
        var record = session.ReadRecord(recordName);
        var profile = session.ReadProfile(session.Parsed.GetValue(profileFile) ?? given.ProfileName);
        if (record is null || profile is null || !session.Fits(recordName, record, profile)) return ExitCode.InvalidInput;
        var verification = Verifier.Compare(given.Root, Scorer.Score(record, profile, given.Mode, session.Cancellation));
        new VerifyView(session).Show(verification, Verifier.HasOwnDigest(given.Root));
        var isFine = verification.Verdict == Verdict.Identical || verification.Verdict == Verdict.Equal && !session.Parsed.GetValue(strict);
        return isFine ? ExitCode.Done : ExitCode.Difference;
    }
}
