using System.Collections.Immutable;
using FixScore.Cli.Commands.Score;
using FixScore.Cli.Files;
using FixScore.Cli.Installed;
using FixScore.Reporting;
using FixScore.Reporting.Html;

namespace FixScore.Cli.Commands.Demo;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>demo</c>: the main job on the embedded records.</summary>
static class DemoCommand
{
    const string Title = "Four slate tablets before a tender";

    const string Story =
        "A school district's repair workshop took two units of each tablet apart, swapped parts between them and put them together again. "
        + "The district asks which one it can keep running. Makers, models and records are invented.";

    static readonly string[] ProfileIds = ["bench-balanced", "bench-limiting"];
    static readonly Option<string> Out = new("--out") { Description = "Where to write the score documents and the page.", HelpName = "DIR", DefaultValueFactory = _ => "fixscore-demo" };

    public static Command Create(Func<ParseResult, CommandSession> session)
    {
        var command = new Command("demo", "Runs the main job on four embedded records and says what it wrote where.") { Out };
        command.SetAction(parsed => Run(session(parsed), parsed.GetValue(Out)!));
        return command;
    }

    static int Run(CommandSession session, string folder)
    {
        var records = Resources.Names("demo/").Select(name => (Name: name["demo/".Length..], Text: Resources.Bytes(name))).ToArray();
        var judgements = Judge(session, [.. records.Select(record => record.Text)]);
        var files = Write(session, folder, records, judgements);
        if (session.AsJson) session.Write(null, JsonOutput.List(judgements.Select(each => each.Score.ToJson())));
        else new DemoView(session).Show(Title, Story, judgements, folder, files);
        return ExitCode.Done;
    }

    static ImmutableArray<Judgement> Judge(CommandSession session, ImmutableArray<byte[]> texts)
    {
        using var progress = Terminal.Progress.Start(session, "Scoring");
        var profiles = ProfileIds.Select(id => ProfileFile.Read(session.Library.Find(id)!.Text, session.Catalogue, session.Library).OrThrow()).ToArray();
        var documents = texts.Select(text => RecordFile.Read(text, session.Catalogue).OrThrow()).ToArray();
        return [.. from profile in profiles
                   from document in documents
                   select new Judgement(document.Record, profile, Scorer.Score(document, profile, cancellation: session.Cancellation))];
    }

    static ImmutableArray<string> Write(CommandSession session, string folder, (string Name, byte[] Text)[] records, ImmutableArray<Judgement> judgements)
    {
        OutputFile.MakeFolder(folder);
        var files = ImmutableArray.CreateBuilder<string>();
        void Put(string name, byte[] bytes)
        {
            session.Write(Path.Combine(folder, name), bytes);
            files.Add(name);
        }
        Put("summary.html", SummaryPage.Render(Title, Story, judgements, session.Culture));
        foreach (var (name, text) in records) Put(name, text);
        foreach (var each in judgements) Put(ScoreName(each), each.Score.ToJson());
        return files.DrainToImmutable();
    }

    internal static string ScoreName(Judgement judgement) => $"{judgement.Record.Id}.{judgement.Profile.Id}.score.json";
}
