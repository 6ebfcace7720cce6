using System.Collections.Immutable;
using FixScore.Cli.Files;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Score;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>score RECORD... --profile P</c>: score documents; as text with several records also a ranking.</summary>
static class ScoreCommand
{
    static readonly Argument<string[]> Records = new("RECORD") { Description = "Teardown records; - for standard input.", Arity = ArgumentArity.OneOrMore };
    static readonly Option<string> ProfileName = new("--profile") { Description = "The rules: an id, id@version, or a file.", HelpName = "PROFILE", Required = true };
    static readonly Option<bool> Explain = new("--explain") { Description = "Everything that was observed, which rule, how many points, what is missing." };
    static readonly Option<bool> Tolerant = new("--tolerant") { Description = "A criterion that fails counts as the whole scale instead of ending the run." };
    static readonly Option<string?> Out = new("--out") { Description = "Write the score documents to this file.", HelpName = "FILE" };

    public static Command Create(Func<ParseResult, CommandSession> session)
    {
        var command = new Command("score", "Scores teardown records by a profile.") { Records, ProfileName, Explain, Tolerant, Out };
        command.SetAction(parsed => Run(session(parsed)));
        return command;
    }

    static int Run(CommandSession session)
    {
        var profile = session.ReadProfile(session.Parsed.GetValue(ProfileName)!);
        var records = session.Parsed.GetValue(Records)!.Select(path => (Path: path, Document: session.ReadRecord(path))).ToArray();
        if (profile is null || records.Any(record => record.Document is null)) return ExitCode.InvalidInput;
        if (records.Select(record => Mismatch(session, record.Path, record.Document!, profile)).ToArray().Contains(true)) return ExitCode.InvalidInput;
        var mode = session.Parsed.GetValue(Tolerant) ? ScoringMode.Tolerant : ScoringMode.Strict;
        using var progress = Terminal.Progress.Start(session, "Scoring");
        ImmutableArray<Judgement> judgements =
            [.. records.Select(record => new Judgement(record.Document!.Record, profile, Scorer.Score(record.Document, profile, mode, session.Cancellation)))];
        Write(session, judgements);
        return ExitCode.Done;
    }

    // All records that a profile is not for are named, not only the first.
    static bool Mismatch(CommandSession session, string path, RecordDocument document, Profile profile)
    {
        if (ProfileMismatchException.For(document.Record.Device, profile) is not { } mismatch) return false;
        session.Problems.Print(path, mismatch.Problem);
        return true;
    }

    static void Write(CommandSession session, ImmutableArray<Judgement> judgements)
    {
        var documents = judgements.Select(each => each.Score.ToJson()).ToArray();
        var json = documents.Length == 1 ? documents[0] : JsonOutput.List(documents);
        var path = session.Parsed.GetValue(Out);
        if (path is not null) session.Write(path, json);
        if (session.AsJson && path is null) session.Write(null, json);
        if (session.AsJson) return;
        var view = new ScoreView(session.Canvas, session.Culture);
        foreach (var judgement in judgements) view.Show(judgement, session.Parsed.GetValue(Explain));
        if (judgements.Length > 1) view.ShowRanking(judgements);
        if (path is not null) session.Canvas.Line($"Score document written to {path}.");
    }
}
