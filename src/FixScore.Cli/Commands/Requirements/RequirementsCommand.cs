using System.Collections.Immutable;
using FixScore.Cli.Installed;
using FixScore.Cli.Terminal;

namespace FixScore.Cli.Commands.Requirements;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>requirements RECORD...</c>: findings against named legal requirements.</summary>
sealed class RequirementsCommand : AppCommand
{
    readonly Argument<string[]> records = new("RECORD") { Description = "Teardown records; - for standard input.", Arity = ArgumentArity.OneOrMore };
    readonly Option<DateOnly?> date = DateOption.Optional("--date", "The day for which the law is asked; the day of the assessment unless given.");
    readonly Option<string[]> setIds = new("--set") { Description = "Only this set of requirements. Can be given several times; all sets unless given.", HelpName = "ID" };

    public RequirementsCommand() : base("requirements", "Checks records against named legal requirements. A screening aid, not legal advice.",
        "requirements slate-3.json", "requirements slate-2.json slate-3.json --set us-co-hb24-1121 --date 2026-07-01 --json")
    {
        Add(records);
        foreach (var option in (Option[])[date, setIds]) Add(option);
        setIds.CompletionSources.Add(_ => Installation.RequirementSetIds);
    }

    public override int Run(CommandSession session)
    {
        var sets = Sets(session);
        var read = session.Parsed.GetValue(records)!.Select(session.ReadRecord).ToArray();
        if (read.Any(record => record is null)) return ExitCode.InvalidInput;
        ImmutableArray<CheckedRecord> results = [.. read.Select(record => Check(session, record!, sets))];
        if (session.AsJson) session.Write(null, RequirementsJson.Of(results));
        else new RequirementsView(session.Canvas, session.Culture).Show(results);
        return results.Any(record => record.HasNotMet) ? ExitCode.Difference : ExitCode.Done;
    }

    CheckedRecord Check(CommandSession session, RecordDocument document, ImmutableArray<Installed<IRequirementSet>> sets)
    {
        var asked = session.Parsed.GetValue(date) ?? document.Record.Assessment.Date;
        var source = new RecordCase(document.Record, session.Cancellation);
        return new(document.Record, asked, [.. sets.Select(set => new CheckedSet(set.Item.Info, set.Check(source, asked, session.Cancellation)))]);
    }

    ImmutableArray<Installed<IRequirementSet>> Sets(CommandSession session)
    {
        var all = session.Catalogue.Requirements;
        if (session.Parsed.GetValue(setIds) is not { Length: > 0 } wanted) return all;
        var known = all.Select(set => set.Item.Info.Id).ToArray();
        if (wanted.FirstOrDefault(id => !known.Contains(id)) is { } unknown)
            throw new UsageException($"There is no set of requirements '{unknown}'. {Suggestion.Hint(unknown, known)}");
        return [.. all.Where(set => wanted.Contains(set.Item.Info.Id))];
    }
}
