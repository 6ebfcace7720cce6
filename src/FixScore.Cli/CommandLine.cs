using System.CommandLine;
using FixScore.Cli.Commands.Completion;
using FixScore.Cli.Commands.Criteria;
using FixScore.Cli.Commands.Demo;
using FixScore.Cli.Commands.New;
using FixScore.Cli.Commands.Profiles;
using FixScore.Cli.Commands.Score;
using FixScore.Cli.Commands.Validate;
using FixScore.Cli.Commands.Verify;
using FixScore.Cli.Terminal;

namespace FixScore.Cli;

/// <summary>The commands and the options that all of them share.</summary>
static class CommandLine
{
    public static RootCommand Build(Streams streams, CancellationToken cancellation)
    {
        var common = new CommonOptions();
        var root = new RootCommand("Scores teardown records of devices by open rules, explains every point, and verifies scores of others.");
        common.AddTo(root);
        CommandSession Session(ParseResult parsed) => new(parsed, common, streams, cancellation);
        root.Subcommands.Add(DemoCommand.Create(Session));
        root.Subcommands.Add(ValidateCommand.Create(Session));
        root.Subcommands.Add(ScoreCommand.Create(Session));
        root.Subcommands.Add(VerifyCommand.Create(Session));
        root.Subcommands.Add(ProfilesCommand.Create(Session));
        root.Subcommands.Add(CriteriaCommand.Create(Session));
        root.Subcommands.Add(NewCommand.Create(Session));
        root.Subcommands.Add(CompletionCommand.Create(Session));
        return root;
    }
}
