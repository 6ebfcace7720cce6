using System.CommandLine;
using FixScore.Cli.Files;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Criteria;

/// <summary><c>criteria</c>: what is installed, with options.</summary>
static class CriteriaCommand
{
    public static Command Create(Func<ParseResult, CommandSession> session)
    {
        var command = new Command("criteria", "Lists the criteria installed, what they measure and their options.");
        command.SetAction(parsed => Run(session(parsed)));
        return command;
    }

    static int Run(CommandSession session)
    {
        if (session.AsJson) session.Write(null, CriteriaJson.Of(session.Catalogue));
        else
            foreach (var criterion in session.Catalogue.Criteria) Show(session, criterion);
        return ExitCode.Done;
    }

    static void Show(CommandSession session, Installed<ICriterion> criterion)
    {
        var (canvas, info) = (session.Canvas, criterion.Item.Info);
        canvas.Heading($"{info.Id}: {info.Title}");
        canvas.Item(1, "", $"Judges {(criterion.Item is IPartCriterion ? "parts" : "the device")}: {info.Measures}, in {info.Unit}; {(info.Direction == Direction.MoreIsBetter ? "more" : "less")} is better.");
        canvas.Item(1, "", $"Source: {info.Source}. From {criterion.Plugin.Id} {criterion.Plugin.Version}, rule {info.RuleVersion}.", quiet: true);
        canvas.Item(1, "", $"Reads: {string.Join(", ", info.Reads)}.", quiet: true);
        foreach (var line in info.Options.Zip(new RuleText(session.Shown).Options(OptionValues.DefaultsOf(info, new(0, 100)))))
        {
            canvas.Item(1, "-", $"{line.First.Name}: {line.First.Text}");
            canvas.Item(2, "", $"by default, on a scale from 0 to 100, {line.Second}", quiet: true);
        }
        canvas.Line();
    }
}
