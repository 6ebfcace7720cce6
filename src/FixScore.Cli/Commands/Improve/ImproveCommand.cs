using FixScore.Analysis.Improving;

namespace FixScore.Cli.Commands.Improve;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>improve RECORD --profile P --to CLASS-or-POINTS</c>: the smallest sets of design changes that reach it.</summary>
sealed class ImproveCommand : AppCommand
{
    readonly Argument<string> record = new("RECORD") { Description = "A teardown record; - for standard input." };
    readonly Option<string> profileName = new("--profile") { Description = "The rules: an id, id@version, or a file.", HelpName = "PROFILE", Required = true };
    readonly Option<string> to = new("--to") { Description = "What is to be reached, at the low end: a class of the profile, or points.", HelpName = "CLASS|POINTS", Required = true };
    readonly Option<int> effort = WholeNumberOption.Of("--effort", "The most work that the search may take, counted in scorings, so that the answer is the same everywhere.", Improvement.UsualEffort);

    public ImproveCommand() : base("improve", "Finds the smallest sets of design changes that lift a device to a class or to points.",
        "improve slate-2.json --profile eu-2023-1669 --to B", "improve slate-2.json --profile bench-balanced --to 85 --json")
    {
        Add(record);
        foreach (var option in (Option[])[profileName, to, effort]) Add(option);
        profileName.CompletionSources.Add(_ => Installed.Installation.ProfileNames);
    }

    public override int Run(CommandSession session)
    {
        var (path, profile) = (session.Parsed.GetValue(record)!, session.ReadProfile(session.Parsed.GetValue(profileName)!));
        if (session.ReadRecord(path) is not { } document || profile is null || !session.Fits(path, document, profile)) return ExitCode.InvalidInput;
        var found = Search(session, document, profile, AskedTarget.Of(profile, session.Parsed.GetValue(to)!));
        if (session.AsJson) session.Write(null, ImproveJson.Of(found));
        else new ImproveView(session.Canvas, session.Culture, profile).Show(document.Record, found);
        return found.IsReached ? ExitCode.Done : ExitCode.Difference;
    }

    Improvement Search(CommandSession session, RecordDocument document, Profile profile, Target target)
    {
        using var progress = Terminal.Progress.Start(session, "Searching");
        return Improvement.Search(document, profile, target, session.Parsed.GetValue(effort), session.Cancellation);
    }
}
