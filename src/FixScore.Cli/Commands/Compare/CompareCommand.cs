using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using FixScore.Cli.Installed;
using FixScore.Cli.Terminal;

namespace FixScore.Cli.Commands.Compare;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>compare</c>: how the ranking depends on the profile, the rule and the weights.</summary>
sealed class CompareCommand : AppCommand
{
    readonly Argument<string[]> records = new("RECORD") { Description = "Teardown records of different devices; - for standard input.", Arity = ArgumentArity.ZeroOrMore };
    readonly Option<string[]> profileNames = new("--profile") { Description = "The rules: an id, id@version, or a file; several times for several.", HelpName = "PROFILE" };
    readonly Option<string?> table = new("--table") { Description = "Instead of records: comma separated values, a row for each unit, a column for each criterion.", HelpName = "CSV" };
    readonly Option<TableScale?> scale = WordOption.Optional<TableScale>("--scale", "How the table's columns become comparable; goalposts where it has them, else extremes.");
    readonly Option<OrderRule?> rule = WordOption.Optional<OrderRule>("--rule", "Only this rule for the table; several unless given.");

    public CompareCommand() : base("compare", "Says how much a ranking depends on the rules.",
        "compare slate-2.json slate-3.json --profile owner-first --profile workshop-first", "compare --table bidders.csv --scale extremes --json")
    {
        Add(records);
        foreach (var option in (Option[])[profileNames, table, scale, rule]) Add(option);
        profileNames.CompletionSources.Add(_ => Installation.ProfileNames);
    }

    public override int Run(CommandSession session)
    {
        var compared = session.Parsed.GetValue(table) is { } path ? OfTable(session, path) : OfRecords(session);
        if (compared is null) return ExitCode.InvalidInput;
        if (session.AsJson) session.Write(null, CompareJson.Of(compared));
        else new CompareView(session.Canvas, session.Culture).Show(compared);
        return ExitCode.Done;
    }

    Compared? OfRecords(CommandSession session)
    {
        var paths = session.Parsed.GetValue(records)!;
        var names = session.Parsed.GetValue(profileNames) ?? [];
        if (paths.Length < 2) throw new UsageException("There is nothing to compare: name two records at least, or a --table.");
        if (names.Length == 0) throw new UsageException("Name a --profile at least, and two to compare profiles.");
        var profiles = names.Select(session.ReadProfile).ToArray();
        var read = paths.Select(record => (Path: record, Document: session.ReadRecord(record))).ToArray();
        if (profiles.Any(profile => profile is null) || read.Any(record => record.Document is null)) return null;
        // Every record that a profile is not for is named, not only the first.
        if (profiles.Sum(profile => read.Count(record => !session.Fits(record.Path, record.Document!, profile!))) > 0) return null;
        if (read.GroupBy(record => record.Document!.Record.Id).FirstOrDefault(same => same.Count() > 1) is { } twice)
            throw new UsageException($"The record '{twice.Key}' stands twice. Assessors of one device are compared otherwise.");
        using var progress = Progress.Start(session, "Comparing");
        ImmutableArray<RecordDocument> documents = [.. read.Select(record => record.Document!)];
        return new([.. documents.Select(document => $"{document.Record.Device.Maker} {document.Record.Device.Model}")], "profile",
            ProfileComparison.Of(documents, [.. profiles.Select(profile => profile!)], cancellation: session.Cancellation));
    }

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
        return new(comparable.Units, "rule", RuleComparison.Of(comparable, given.Weights, rules));
    }
}
