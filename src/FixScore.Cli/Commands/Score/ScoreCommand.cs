using System.Collections.Immutable;
using FixScore.Cli.Files;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Score;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>score RECORD... --profile P</c>: score documents; as text with several records also a ranking.</summary>
sealed class ScoreCommand : AppCommand
{
    readonly Argument<string[]> records = new("RECORD") { Description = "Teardown records; - for standard input.", Arity = ArgumentArity.OneOrMore };
    readonly Option<string> profileName = new("--profile") { Description = "The rules: an id, id@version, or a file.", HelpName = "PROFILE", Required = true };
    readonly Option<bool> explain = new("--explain") { Description = "Everything that was observed, which rule, how many points, what is missing." };
    readonly Option<bool> tolerant = new("--tolerant") { Description = "A criterion that fails counts as the whole scale instead of ending the run." };
    readonly Option<bool> lines = new("--ndjson") { Description = "A record a line in, a score document a line out, in the same order; a bad line becomes its problems and the rest goes on." };
    readonly Option<string?> @out = new("--out") { Description = "Write the score document to this file; a list of them when there are several records. With --ndjson a name that ends in .parquet gets a table.", HelpName = "FILE" };

    public ScoreCommand() : base("score", "Scores teardown records by a profile.",
        "score slate-3.json --profile bench-balanced --explain", "score slate-2.json slate-3.json --profile bench-limiting", "score - --profile my-profile.json --json < slate-3.json", "score - --ndjson --profile bench-balanced < many.ndjson")
    {
        Add(records);
        foreach (var option in (Option[])[profileName, explain, tolerant, lines, @out]) Add(option);
        profileName.CompletionSources.Add(_ => Installed.Installation.ProfileNames);
    }

    public override int Run(CommandSession session)
    {
        if (session.Parsed.GetValue(lines)) return ScoreLines(session);
        var profile = session.ReadProfile(session.Parsed.GetValue(profileName)!);
        var read = session.Parsed.GetValue(records)!.Select(path => (Path: path, Document: session.ReadRecord(path))).ToArray();
        if (profile is null || read.Any(record => record.Document is null)) return ExitCode.InvalidInput;
        // All records that the profile is not for are named, not only the first.
        if (read.Count(record => !session.Fits(record.Path, record.Document!, profile)) > 0) return ExitCode.InvalidInput;
        Write(session, Judge(session, [.. read.Select(record => record.Document!)], profile));
        return ExitCode.Done;
    }

    int ScoreLines(CommandSession session)
    {
        if (session.Parsed.GetValue(records) is not [var path]) throw new UsageException("--ndjson takes one file, or - for standard input.");
        if (session.Parsed.GetValue(explain)) throw new UsageException("--ndjson writes whole score documents; --explain is for people.");
        return session.ReadProfile(session.Parsed.GetValue(profileName)!) is { } profile
            ? new LineScoring(session, profile, Mode(session)).Run(path, session.Parsed.GetValue(@out))
            : ExitCode.InvalidInput;
    }

    ScoringMode Mode(CommandSession session) => session.Parsed.GetValue(tolerant) ? ScoringMode.Tolerant : ScoringMode.Strict;

    ImmutableArray<Judgement> Judge(CommandSession session, ImmutableArray<RecordDocument> documents, Profile profile)
    {
        var mode = Mode(session);
        using var progress = Terminal.Progress.Start(session, "Scoring");
        return [.. documents.Select(document => new Judgement(document.Record, profile, Scorer.Score(document, profile, mode, session.Cancellation)))];
    }

    void Write(CommandSession session, ImmutableArray<Judgement> judgements)
    {
        var path = session.Parsed.GetValue(@out);
        if (path is not null || session.AsJson) session.Write(path, Json(judgements));
        if (session.AsJson) return;
        var view = new ScoreView(session.Canvas, session.Culture);
        foreach (var judgement in judgements) view.Show(judgement, session.Parsed.GetValue(explain));
        if (judgements.Length > 1) view.ShowRanking(judgements);
        if (path is not null) session.Canvas.Line($"{(judgements.Length == 1 ? "Score document" : "Score documents")} written to {path}.");
    }

    static byte[] Json(ImmutableArray<Judgement> judgements) =>
        judgements.Length == 1 ? judgements[0].Score.ToJson() : JsonOutput.List(judgements.Select(each => each.Score.ToJson()));
}
