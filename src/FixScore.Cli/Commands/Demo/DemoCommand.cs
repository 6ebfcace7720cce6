using System.Collections.Immutable;
using FixScore.Cli.Files;
using FixScore.Cli.Installed;
using FixScore.Reporting;
using FixScore.Reporting.Html;

namespace FixScore.Cli.Commands.Demo;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>demo</c>: the main job on the embedded records.</summary>
sealed class DemoCommand : AppCommand
{
    static readonly string[] ProfileIds = ["bench-balanced", "bench-limiting"];

    // The embedded phone is no tablet, and not compared with them.
    static readonly string[] Tablets = ["brindlewick-pane-10", "larkfield-slate-2", "larkfield-slate-3", "ostravane-plinth-11"];

    readonly Option<string> @out = new("--out") { Description = "Where to write the score documents and the page; ./fixscore-demo unless given.", HelpName = "DIR", DefaultValueFactory = _ => "fixscore-demo" };

    public DemoCommand() : base("demo", "Runs the main job on four embedded records and says what it wrote where.", "demo", "demo --out tablets") => Add(@out);

    public override int Run(CommandSession session)
    {
        var folder = session.Parsed.GetValue(@out)!;
        var records = Tablets.Select(id => (Name: $"{id}.json", Text: Resources.Bytes($"demo/{id}.json"))).ToArray();
        var judgements = Judge(session, [.. records.Select(record => record.Text)]);
        Write(session, folder, records, judgements);
        if (session.AsJson) session.Write(null, JsonOutput.List(judgements.Select(each => each.Score.ToJson())));
        else new DemoView(session).Show(judgements, folder);
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

    static void Write(CommandSession session, string folder, (string Name, byte[] Text)[] records, ImmutableArray<Judgement> judgements)
    {
        OutputFile.MakeFolder(folder);
        void Put(string name, byte[] bytes) => session.Write(Path.Combine(folder, name), bytes);
        Put(DemoView.PageName, SummaryPage.Render(DemoView.Title, DemoView.Story, judgements, session.Culture));
        foreach (var (name, text) in records) Put(name, text);
        foreach (var each in judgements) Put(DemoView.ScoreName(each), each.Score.ToJson());
    }
}
