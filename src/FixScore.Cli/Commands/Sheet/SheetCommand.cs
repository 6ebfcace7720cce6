using System.Globalization;
using System.Text;
using FixScore.Cli.Commands.Routing;
using FixScore.Reporting.Sheet;

namespace FixScore.Cli.Commands.Sheet;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>sheet RECORD</c>: the bench sheet, a work order to tick off.</summary>
sealed class SheetCommand : AppCommand
{
    readonly Argument<string> record = new("RECORD") { Description = "A teardown record; - for standard input." };
    readonly Option<string?> part = new("--part") { Description = "One part by its id, or all parts of a role in one go; every part unless given. An id wins over a role.", HelpName = "PART" };
    readonly Option<SheetForm> form = WordOption.Of<SheetForm>("--form", "How the sheet is written; text unless given. With --json it is data.");
    readonly Option<string?> @out = new("--out") { Description = "Write the sheet to this file.", HelpName = "FILE" };

    public SheetCommand() : base("sheet", "Writes a bench sheet: the work on parts in order, to tick off.",
        "sheet slate-2.json --part battery", "sheet slate-2.json --part battery --form html --out battery.html")
    {
        Add(record);
        foreach (var option in (Option[])[part, form, @out]) Add(option);
        part.CompletionSources.Add(_ => Records.Roles.Known);
    }

    public override int Run(CommandSession session)
    {
        if (session.ReadRecord(session.Parsed.GetValue(record)!) is not { } document) return ExitCode.InvalidInput;
        var asked = AskedParts.Of([document.Record], session.Parsed.GetValue(part));
        var plan = Plan(session, asked[0]);
        var path = session.Parsed.GetValue(@out);
        session.Write(path, session.AsJson ? SheetJson.Of(plan) : Rendered(plan, session.Parsed.GetValue(form), session.Culture));
        if (path is not null && !session.AsJson) session.Canvas.Line($"Bench sheet written to {path}.");
        return ExitCode.Done;
    }

    static SheetPlan Plan(CommandSession session, AskedParts asked)
    {
        using var progress = Terminal.Progress.Start(session, "Searching");
        return SheetPlan.Of(new RecordCase(asked.Record, session.Cancellation), asked.Parts);
    }

    static byte[] Rendered(SheetPlan plan, SheetForm form, CultureInfo culture) => form switch
    {
        SheetForm.Html => SheetPage.Render(plan, culture),
        SheetForm.Markdown => Encoding.UTF8.GetBytes(SheetMarkdown.Render(plan, culture)),
        _ => Encoding.UTF8.GetBytes(SheetText.Render(plan, culture)),
    };
}
