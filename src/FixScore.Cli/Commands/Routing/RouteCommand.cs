using System.Collections.Immutable;
using FixScore.Disassembly;

namespace FixScore.Cli.Commands.Routing;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>route RECORD...</c>: the shortest way to each part, or to those asked for.</summary>
sealed class RouteCommand : AppCommand
{
    readonly Argument<string[]> records = new("RECORD") { Description = "Teardown records; - for standard input.", Arity = ArgumentArity.OneOrMore };
    readonly Option<string?> part = new("--part") { Description = "One part by its id, or all parts of a role; every part unless given. An id wins over a role.", HelpName = "PART" };
    readonly Option<RouteCost> cost = WordOption.Of<RouteCost>("--cost", "What a route is to be shortest in; steps unless given.");
    readonly Option<bool> classes = new("--classes") { Description = "Classes of EN 45554 as well, the worst along the route." };
    readonly Option<FirstTool> firstTool = WordOption.Of<FirstTool>("--first-tool", "Whether the first tool taken up in a step begun by hand is a change of tool; no-change unless given.");
    readonly Option<int> effort = WholeNumberOption.Of("--effort", "The most states that a search may open, counted, so that the answer is the same everywhere.", RouteQuery.UsualEffort);

    readonly Option<string?> svg = new("--svg") { Description = "Write a picture of the record to this file, as SVG: its parts in layers, with a route to each part asked for; the priority parts unless given. One record only.", HelpName = "FILE" };

    public RouteCommand() : base("route", "Finds the shortest way to parts, with proof.",
        "route slate-2.json", "route slate-2.json --part battery --classes", "route slate-2.json slate-3.json --cost seconds --json", "route slate-2.json --svg slate-2.svg")
    {
        Add(records);
        foreach (var option in (Option[])[part, cost, classes, firstTool, effort, svg]) Add(option);
        part.CompletionSources.Add(_ => Records.Roles.Known);
    }

    public override int Run(CommandSession session)
    {
        var (files, path, word) = (session.Parsed.GetValue(records)!, session.Parsed.GetValue(svg), session.Parsed.GetValue(part));
        PictureFile.Check(path, files.Length);
        var documents = files.Select(session.ReadRecord).ToArray();
        if (documents.Any(document => document is null)) return ExitCode.InvalidInput;
        var asked = AskedParts.Of([.. documents.Select(document => document!.Record)], word);
        var query = Query(session);
        Show(session, Find(session, asked, query), isDetailed: word is not null);
        PictureFile.Write(session, path, asked[0], query, isNamed: word is not null);
        return ExitCode.Done;
    }

    RouteQuery Query(CommandSession session) => new([], session.Parsed.GetValue(cost), session.Parsed.GetValue(firstTool), session.Parsed.GetValue(effort));

    static ImmutableArray<FoundRoutes> Find(CommandSession session, ImmutableArray<AskedParts> asked, RouteQuery query)
    {
        using var progress = Terminal.Progress.Start(session, "Searching");
        return [.. asked.Select(each => FoundRoutes.Of(new RecordCase(each.Record, session.Cancellation), each.Parts, query))];
    }

    void Show(CommandSession session, ImmutableArray<FoundRoutes> found, bool isDetailed)
    {
        var withClasses = session.Parsed.GetValue(classes);
        if (session.AsJson) session.Write(null, RouteJson.Of(found, withClasses));
        else new RouteView(session).Show(found, isDetailed, withClasses);
    }
}
