namespace FixScore.Cli.Commands.Criteria;

/// <summary><c>criteria</c>: what is installed, with options.</summary>
sealed class CriteriaCommand() : AppCommand("criteria", "Lists the criteria installed, what they measure and their options.", "criteria", "criteria --plugin Acme.dll --json")
{
    public override int Run(CommandSession session)
    {
        if (session.AsJson) session.Write(null, CriteriaJson.Of(session.Catalogue));
        else new CriteriaView(session).Show(session.Catalogue);
        return ExitCode.Done;
    }
}
