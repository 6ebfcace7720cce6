using FixScore.Cli.Installed;

namespace FixScore.Cli.Commands.Diff;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>diff OLD NEW</c>: what changed and what each change did to the score.</summary>
sealed class DiffCommand : AppCommand
{
    readonly Argument<string> old = new("OLD") { Description = "The old teardown record." };
    readonly Argument<string> @new = new("NEW") { Description = "The new teardown record." };
    readonly Option<string?> profileName = new("--profile") { Description = "Also what the changes did to the score by these rules: an id, id@version, or a file.", HelpName = "PROFILE" };

    public DiffCommand() : base("diff", "Says what changed between two records, and what it did to the score; exits with 1 when anything did.",
        "diff slate-2.json slate-3.json", "diff slate-2.json slate-3.json --profile bench-balanced --json")
    {
        Add(old);
        Add(@new);
        Add(profileName);
        profileName.CompletionSources.Add(_ => Installation.ProfileNames);
    }

    public override int Run(CommandSession session)
    {
        var wanted = session.Parsed.GetValue(profileName);
        var profile = wanted is null ? null : session.ReadProfile(wanted);
        var paths = new[] { session.Parsed.GetValue(old)!, session.Parsed.GetValue(@new)! };
        var read = paths.Select(session.ReadRecord).ToArray();
        if (read.Any(record => record is null) || (wanted is not null && profile is null)) return ExitCode.InvalidInput;
        if (profile is not null && paths.Zip(read).Count(each => !session.Fits(each.First, each.Second!, profile)) > 0) return ExitCode.InvalidInput;
        var found = Difference.Between(read[0]!, read[1]!, profile, session.Cancellation);
        if (session.AsJson) session.Write(null, DiffJson.Of(found));
        else new DiffView(session.Canvas, session.Culture).Show(found);
        return found.IsNone ? ExitCode.Done : ExitCode.Difference;
    }
}
