namespace FixScore.Cli;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary>One command: what it takes and what it does. Made anew for each run, because the parser ties symbols to their command.</summary>
/// <param name="name">The word that calls it.</param>
/// <param name="description">What it does, in a sentence.</param>
/// <param name="examples">How it is called, for its help.</param>
abstract class AppCommand(string name, string description, params string[] examples) : Command(name, description)
{
    public IReadOnlyList<string> Examples => examples;

    /// <summary>Does it. A command that only holds others is never run.</summary>
    public virtual int Run(CommandSession session) => ExitCode.Usage;

    static int Run(CommandSession session, AppCommand command)
    {
        var code = command.Run(session);
        session.TellMeasures();
        return code;
    }

    /// <summary>Ties the command and those below it to what runs them.</summary>
    public void RunIn(Func<ParseResult, CommandSession> session)
    {
        if (Subcommands.Count == 0) SetAction(parsed => Run(session(parsed), this));
        foreach (var below in Subcommands.OfType<AppCommand>()) below.RunIn(session);
    }
}
