using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using FixScore.Analysis.Comparing;
using FixScore.Cli.Installed;
using FixScore.Cli.Terminal;
using FixScore.Reporting.Cards;
using FixScore.Reporting.Reports;

namespace FixScore.Cli.Commands.Report;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>report RECORD... --profile P... --out FILE</c>: the published verdict.</summary>
sealed class ReportCommand : AppCommand
{
    readonly Argument<string[]> records = new("RECORD") { Description = "Teardown records of different devices; - for standard input.", Arity = ArgumentArity.OneOrMore };
    readonly Option<string[]> profileNames = new("--profile") { Description = "The rules: an id, id@version, or a file; the first decides the order. bench-balanced unless given.", HelpName = "PROFILE" };
    readonly Option<string?> @out = new("--out") { Description = "Write the report to this file: a page for .html, Markdown for .md, else text. Text on the terminal unless given.", HelpName = "FILE" };
    readonly Option<string?> title = new("--title") { Description = "The heading; made of the devices' names unless given.", HelpName = "TEXT" };
    readonly Option<string[]> generations = new("--generation") { Description = "Two ids of records, last year's model and this one, to be set side by side. Can be given several times.", HelpName = "OLD NEW", Arity = new ArgumentArity(2, 2), AllowMultipleArgumentsPerToken = true };
    readonly Option<string?> tables = new("--tables") { Description = "Also write the tables to this folder, as CSV and LaTeX.", HelpName = "DIR" };
    readonly Option<string?> card = new("--card") { Description = "Also write cards for a video or a post to this folder: wide and square, SVG and PNG.", HelpName = "DIR" };
    readonly Option<CardScheme> scheme = WordOption.Of<CardScheme>("--scheme", "Whether cards are light or dark; a page is both.");
    readonly Option<int> draws = WholeNumberOption.Of("--draws", "How many sets of weights are drawn.", 10_000);
    readonly Option<int> seed = WholeNumberOption.Of("--seed", "Seed of the draws.", 1);

    public ReportCommand() : base("report", "Makes the published verdict: one page with everything from the headline to the last observation.",
        "report slate-3.json --out slate-3.html", "report slate-2.json slate-3.json --profile bench-balanced --profile bench-limiting --generation slate-2 slate-3 --out tender.md")
    {
        Add(records);
        foreach (var option in (Option[])[profileNames, @out, title, generations, tables, card, scheme, draws, seed]) Add(option);
        profileNames.CompletionSources.Add(_ => Installation.ProfileNames);
    }

    public override int Run(CommandSession session) => Input(session) is { } input ? new WrittenReport(session).Write(
        input, session.Parsed.GetValue(@out), session.Parsed.GetValue(tables), session.Parsed.GetValue(card), session.Parsed.GetValue(scheme)) : ExitCode.InvalidInput;

    ReportInput? Input(CommandSession session)
    {
        var names = session.Parsed.GetValue(profileNames) is { Length: > 0 } given ? given : ["bench-balanced"];
        var profiles = names.Select(session.ReadProfile).ToArray();
        var read = session.Parsed.GetValue(records)!.Select(path => (Path: path, Document: session.ReadRecord(path))).ToArray();
        if (profiles.Any(profile => profile is null) || read.Any(record => record.Document is null)) return null;
        // Every record that a profile is not for is named, not only the first.
        if (profiles.Sum(profile => read.Count(record => !session.Fits(record.Path, record.Document!, profile!))) > 0) return null;
        using var progress = Progress.Start(session, "Reporting");
        ImmutableArray<RecordDocument> documents = [.. read.Select(record => record.Document!)];
        return ReportInputs.Of(documents, [.. profiles!], session.Catalogue.Requirements, Generations(session, documents),
            new(WeightSpread.Uniform, session.Parsed.GetValue(draws), session.Parsed.GetValue(seed)), session.Cancellation) with
        {
            Title = session.Parsed.GetValue(title),
            Command = Command(session, documents, names),
        };
    }

    ImmutableArray<(string Old, string New)> Generations(CommandSession session, ImmutableArray<RecordDocument> documents)
    {
        string[] ids = [.. documents.Select(document => document.Record.Id)];
        if (ids.GroupBy(id => id, StringComparer.Ordinal).FirstOrDefault(same => same.Count() > 1) is { } twice)
            throw new UsageException($"The record '{twice.Key}' stands twice. Give each record an id of its own.");
        var named = session.Parsed.GetValue(generations) ?? [];
        if (named.FirstOrDefault(id => !ids.Contains(id)) is { } unknown)
            throw new UsageException($"There is no record '{unknown}' in this report. {Suggestion.Hint(unknown, ids)}");
        return [.. named.Chunk(2).Select(pair => (pair[0], pair[1]))];
    }

    // Files are named as the records are, so that the command can be quoted.
    string Command(CommandSession session, ImmutableArray<RecordDocument> documents, string[] names) => string.Join(' ',
    [
        "fixscore report",
        .. documents.Select(document => $"{document.Record.Id}.json"),
        .. names.Select(name => $"--profile {name}"),
        .. (session.Parsed.GetValue(generations) ?? []).Chunk(2).Select(pair => $"--generation {pair[0]} {pair[1]}"),
        string.Create(CultureInfo.InvariantCulture, $"--draws {session.Parsed.GetValue(draws)} --seed {session.Parsed.GetValue(seed)}"),
        "--out report.html",
    ]);
}
