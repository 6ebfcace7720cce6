using System.Collections.Immutable;
using System.Globalization;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Weights.Acceptability;
using FixScore.Cli.Files;
using FixScore.Cli.Installed;
using FixScore.Cli.Terminal;
using FixScore.Reporting.Figures;
using FixScore.Reporting.Paper;
using FixScore.Reporting.Tables;

namespace FixScore.Cli.Commands.Compare;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>compare</c>: how the ranking depends on the profile, the rule and the weights.</summary>
sealed class CompareCommand : AppCommand
{
    readonly Argument<string[]> records = new("RECORD") { Description = "Teardown records of different devices; - for standard input.", Arity = ArgumentArity.ZeroOrMore };
    readonly Option<string[]> profileNames = new("--profile") { Description = "The rules: an id, id@version, or a file; several times for several.", HelpName = "PROFILE" };
    readonly Option<bool> assessors = new("--assessors") { Description = "The records are of one device by several assessors: says how far they agree, and on what not." };
    readonly Option<string?> table = new("--table") { Description = "Instead of records: comma separated values, a row for each unit, a column for each criterion.", HelpName = "CSV" };
    readonly Option<TableScale?> scale = WordOption.Optional<TableScale>("--scale", "How the table's columns become comparable; goalposts where it has them, else extremes.");
    readonly Option<OrderRule?> rule = WordOption.Optional<OrderRule>("--rule", "Only this rule for the table; several unless given.");

    readonly Option<WeightSpread> spread = WordOption.Of<WeightSpread>("--weights", "Which other weights are sensible: all, all in the same order of importance, or such near those given.");
    readonly Option<int> draws = WholeNumberOption.Of("--draws", "How many sets of weights are drawn.", 10_000);
    readonly Option<int> seed = WholeNumberOption.Of("--seed", "Seed of the draws.", 1);
    readonly Option<string?> paper = new("--paper") { Description = "Write a folder for a paper: tables, figures, methods, sources, and the command that makes it again.", HelpName = "DIR" };
    readonly Option<string?> svg = new("--svg") { Description = "Write a picture of the places: a column for each profile or rule, a line for each device.", HelpName = "FILE" };

    public CompareCommand() : base("compare", "Says how much a ranking depends on the rules.",
        "compare slate-2.json slate-3.json --profile owner-first --profile workshop-first", "compare --table bidders.csv --scale extremes --json")
    {
        Add(records);
        foreach (var option in (Option[])[profileNames, assessors, table, scale, rule, spread, draws, seed, paper, svg]) Add(option);
        profileNames.CompletionSources.Add(_ => Installation.ProfileNames);
    }

    public override int Run(CommandSession session)
    {
        var picture = session.Parsed.GetValue(svg);
        if (session.Parsed.GetValue(assessors) && picture is not null) throw new UsageException("--assessors compares one ranking with nothing: there are no places for --svg to draw.");
        if (session.Parsed.GetValue(assessors)) return new ComparedAssessors(session).Run(session.Parsed.GetValue(records)!, session.Parsed.GetValue(profileNames) ?? []);
        var compared = session.Parsed.GetValue(table) is { } path ? OfTable(session, path) : new ComparedRecords(session, session.Parsed.GetValue(spread), Draws(session)).Of(session.Parsed.GetValue(records)!, session.Parsed.GetValue(profileNames) ?? []);
        if (compared is null) return ExitCode.InvalidInput;
        if (picture is not null && compared.Result.Profiles.Length < 2) throw new UsageException($"--svg draws lines from one {compared.What} to the next, and there is only one.");
        if (session.AsJson) session.Write(null, CompareJson.Of(compared, Draws(session)));
        else new CompareView(session.Canvas, session.Culture).Show(compared, Draws(session));
        if (picture is not null) OutputFile.Write(picture, ComparisonFigures.Places(compared.Result, compared.Names));
        if (session.Parsed.GetValue(paper) is { } folder) WritePaper(session, compared, folder);
        return ExitCode.Done;
    }

    void WritePaper(CommandSession session, Compared compared, string folder)
    {
        var files = PaperFolder.Of(new(
            compared.Result, compared.Names, compared.Records, [.. compared.Profiles, .. compared.Bases],
            compared.Studies, [.. StudyTables.Of(compared.Studies), .. UncertaintyTables.Of(Scores(compared))], StudyText.Methods(compared.Studies, session.Parsed.GetValue(spread), Draws(session)), Command(session, compared), Scorer.KernelVersion));
        OutputFolder.Write(folder, files);
        if (!session.AsJson) session.Canvas.Line($"{files.Length} files written to {folder}; METHODS.md says how to make them again.");
    }

    static ImmutableArray<UncertainScore> Scores(Compared compared) =>
        [.. compared.Spreads.Select(spread => new UncertainScore(compared.Result.Devices[spread.Device], compared.Result.Profiles[spread.Profile], spread.Uncertainty))];

    AcceptabilityOptions Draws(CommandSession session) => new(session.Parsed.GetValue(draws), session.Parsed.GetValue(seed));

    // The same comparison from inside the folder.
    string Command(CommandSession session, Compared compared) => string.Join(' ',
    [
        "fixscore compare",
        .. compared.Profiles.IsEmpty ? ["--table records/table.csv"] : compared.Records.Select(record => $"records/{record.Name}"),
        .. compared.Profiles.Select(profile => $"--profile profiles/{profile.Name}"),
        .. compared.Profiles.IsEmpty ? [] : (string[])["--profiles profiles"],
        .. session.Parsed.GetValue(scale) is { } asked ? [$"--scale {Word.Of(asked)}"] : (string[])[],
        .. session.Parsed.GetValue(rule) is { } only ? [$"--rule {Word.Of(only)}"] : (string[])[],
        $"--weights {Word.Of(session.Parsed.GetValue(spread))}",
        string.Create(CultureInfo.InvariantCulture, $"--draws {session.Parsed.GetValue(draws)} --seed {session.Parsed.GetValue(seed)}"),
        "--paper again",
    ]);

    Compared? OfTable(CommandSession session, string path)
    {
        if (session.Parsed.GetValue(records) is { Length: > 0 }) throw new UsageException("Compare records or a --table, not both.");
        var input = session.Read(path);
        var (given, problems) = TableReader.Read(input.WithoutMark);
        session.Problems.Print(input.Name, problems);
        if (given is null) return null;
        var (comparable, obstacles) = TableScales.Apply(given, session.Parsed.GetValue(scale) ?? TableScales.Usual(given));
        foreach (var obstacle in obstacles) session.Problems.Print(input.Name, obstacle);
        if (comparable is null) return null;
        ImmutableArray<OrderRule> rules = session.Parsed.GetValue(rule) is { } asked ? [asked] : TableScales.UsualRules(comparable);
        WeightStudy[] studies = rules.Contains(OrderRule.Arithmetic) ? [WeightStudy.Of("arithmetic", comparable, given.Weights, session.Parsed.GetValue(spread), Draws(session))] : [];
        return new(comparable.Units, "rule", RuleComparison.Of(comparable, given.Weights, rules), [.. studies], [], [new("table.csv", input.Bytes, "the table compared")], [], []);
    }
}
