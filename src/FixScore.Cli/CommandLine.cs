using FixScore.Cli.Commands.Compare;
using FixScore.Cli.Commands.Completion;
using FixScore.Cli.Commands.Criteria;
using FixScore.Cli.Commands.Demo;
using FixScore.Cli.Commands.Diff;
using FixScore.Cli.Commands.Improve;
using FixScore.Cli.Commands.New;
using FixScore.Cli.Commands.Profiles;
using FixScore.Cli.Commands.Report;
using FixScore.Cli.Commands.Requirements;
using FixScore.Cli.Commands.Routing;
using FixScore.Cli.Commands.Score;
using FixScore.Cli.Commands.Sheet;
using FixScore.Cli.Commands.Swaps;
using FixScore.Cli.Commands.Validate;
using FixScore.Cli.Commands.Verify;
using FixScore.Cli.Help;
using FixScore.Cli.Terminal;

namespace FixScore.Cli;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;
using System.CommandLine.Help;

/// <summary>The commands and the options that all of them share.</summary>
static class CommandLine
{
    public const string Name = "fixscore";

    public static RootCommand Build(Streams streams, CancellationToken cancellation)
    {
        var common = new CommonOptions();
        var root = new RootCommand("Scores teardown records of devices by open rules, explains every point, and verifies scores of others.");
        common.AddTo(root);
        AppCommand[] commands =
        [
            new DemoCommand(), new ValidateCommand(), new ScoreCommand(), new VerifyCommand(), new RouteCommand(), new SheetCommand(), new SwapsCommand(), new RequirementsCommand(), new CompareCommand(), new DiffCommand(), new ImproveCommand(), new ReportCommand(),
            new ProfilesCommand(), new CriteriaCommand(), new NewCommand(), new CompletionCommand(),
        ];
        foreach (var command in commands)
        {
            command.RunIn(parsed => new(parsed, common, streams, cancellation));
            root.Subcommands.Add(command);
        }
        Describe(root.Options, streams);
        return root;
    }

    static void Describe(IEnumerable<Option> options, Streams streams)
    {
        foreach (var option in options)
        {
            if (option is VersionOption) (option.Description, option.Action) = ("Says which version this is.", new VersionShown(streams));
            if (option is HelpOption) (option.Description, option.Action) = ("Says how a command is called and what it takes.", new HelpShown(streams));
        }
    }
}
