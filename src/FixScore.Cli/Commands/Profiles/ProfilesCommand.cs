using System.Text;

namespace FixScore.Cli.Commands.Profiles;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>profiles</c>: what is installed.</summary>
sealed class ProfilesCommand : AppCommand
{
    readonly Option<bool> schema = new("--schema") { Description = "JSON Schema of profiles, with the options of the criteria installed." };

    public ProfilesCommand() : base("profiles", "Lists the profiles installed.", "profiles --profiles my-profiles", "profiles --schema > profile.schema.json") => Add(schema);

    public override int Run(CommandSession session)
    {
        if (session.Parsed.GetValue(schema))
        {
            session.Write(null, Encoding.UTF8.GetBytes(Schemas.ProfileFor(session.Catalogue) + "\n"));
            return ExitCode.Done;
        }
        var read = session.Library.Entries.Select(entry => (Entry: entry, Result: ProfileFile.Read(entry.Text, session.Catalogue, session.Library))).ToArray();
        foreach (var (entry, result) in read) session.Problems.Print(entry.From, result.Problems);
        new ProfilesView(session).Show([.. read.Where(each => each.Result.IsValid).Select(each => (each.Entry.From, each.Result.Value!))]);
        return read.All(each => each.Result.IsValid) ? ExitCode.Done : ExitCode.InvalidInput;
    }
}
