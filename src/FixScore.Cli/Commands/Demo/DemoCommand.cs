using System.Collections.Immutable;
using System.Text;
using FixScore.Analysis.Comparing;
using FixScore.Cli.Files;
using FixScore.Cli.Installed;
using FixScore.Reporting;
using FixScore.Reporting.Cards;
using FixScore.Reporting.Pictures;
using FixScore.Reporting.Reports;

namespace FixScore.Cli.Commands.Demo;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>demo</c>: the main job on the embedded records.</summary>
sealed class DemoCommand : AppCommand
{
    static readonly string[] ProfileIds = ["bench-balanced", "bench-limiting"];

    // The embedded phone is no tablet, and not compared with them.
    static readonly string[] Tablets = ["brindlewick-pane-10", "larkfield-slate-2", "larkfield-slate-3", "ostravane-plinth-11"];

    static readonly (string Old, string New) Generation = ("larkfield-slate-2", "larkfield-slate-3");

    const int Draws = 10_000;
    const int Seed = 1;

    readonly Option<string> @out = new("--out") { Description = "Where to write the score documents and the page; ./fixscore-demo unless given.", HelpName = "DIR", DefaultValueFactory = _ => "fixscore-demo" };

    public DemoCommand() : base("demo", "Runs the main job on four embedded records and says what it wrote where.", "demo", "demo --out tablets") => Add(@out);

    public override int Run(CommandSession session)
    {
        var folder = session.Parsed.GetValue(@out)!;
        var records = Tablets.Select(id => (Name: $"{id}.json", Text: Resources.Bytes($"demo/{id}.json"))).ToArray();
        var input = Judge(session, [.. records.Select(record => record.Text)]);
        Write(session, folder, records, input);
        if (session.AsJson) session.Write(null, JsonOutput.List(input.Judgements.Select(each => each.Score.ToJson())));
        else new DemoView(session).Show(input.Judgements, folder);
        return ExitCode.Done;
    }

    static ReportInput Judge(CommandSession session, ImmutableArray<byte[]> texts)
    {
        using var progress = Terminal.Progress.Start(session, "Scoring");
        ImmutableArray<Profile> profiles = [.. ProfileIds.Select(id => ProfileFile.Read(session.Library.Find(id)!.Text, session.Catalogue, session.Library).OrThrow())];
        ImmutableArray<RecordDocument> documents = [.. texts.Select(text => RecordFile.Read(text, session.Catalogue).OrThrow())];
        return ReportInputs.Of(documents, profiles, session.Catalogue.Requirements, [Generation], new(WeightSpread.Uniform, Draws, Seed), session.Cancellation) with
        {
            Title = DemoView.Title,
            Introduction = DemoView.Story,
            Command = "fixscore demo",
        };
    }

    static void Write(CommandSession session, string folder, (string Name, byte[] Text)[] records, ReportInput input)
    {
        OutputFile.MakeFolder(folder);
        void Put(string name, byte[] bytes) => session.Write(Path.Combine(folder, name), bytes);
        Put(DemoView.PageName, FixScore.Reporting.Reports.Report.Html(input, session.Culture, session.Cancellation));
        Put(DemoView.RankingName, Encoding.UTF8.GetBytes(Card.Svg(Placing.Of(input.Judgements.Where(each => each.Score.Profile == input.Judgements[0].Score.Profile)), CardShape.Wide, session.Culture)));
        Put(DemoView.RoutesName, Encoding.UTF8.GetBytes(RoutePicture.Svg(new RecordCase(input.Generations[0].New, session.Cancellation), session.Culture)));
        foreach (var (name, text) in records) Put(name, text);
        foreach (var each in input.Judgements) Put(DemoView.ScoreName(each), each.Score.ToJson());
    }
}
