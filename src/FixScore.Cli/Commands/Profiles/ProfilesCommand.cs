using System.Text;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Profiles;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>profiles</c>: what is installed.</summary>
static class ProfilesCommand
{
    static readonly Option<bool> Schema = new("--schema") { Description = "JSON Schema of profiles, with the options of the criteria installed." };

    public static Command Create(Func<ParseResult, CommandSession> session)
    {
        var command = new Command("profiles", "Lists the profiles installed.") { Schema };
        command.SetAction(parsed => Run(session(parsed), parsed.GetValue(Schema)));
        return command;
    }

    static int Run(CommandSession session, bool schema)
    {
        if (schema)
        {
            session.Write(null, Encoding.UTF8.GetBytes(Schemas.ProfileFor(session.Catalogue) + "\n"));
            return ExitCode.Done;
        }
        var read = session.Library.Entries.Select(entry => (Entry: entry, Result: ProfileFile.Read(entry.Text, session.Catalogue, session.Library))).ToArray();
        foreach (var (entry, result) in read) session.Problems.Print(entry.From, result.Problems);
        var profiles = read.Where(each => each.Result.IsValid).Select(each => (each.Entry.From, Profile: each.Result.Value!)).ToArray();
        if (session.AsJson) session.Write(null, Json(profiles));
        else session.Canvas.Table([("Profile", false), ("Version", false), ("Title", false), ("Status", false), ("From", false)],
            profiles.Select(each => (string[])[each.Profile.Id, each.Profile.Version, each.Profile.Title, Word.Of(each.Profile.Status), each.From]));
        return read.All(each => each.Result.IsValid) ? ExitCode.Done : ExitCode.InvalidInput;
    }

    static byte[] Json((string From, Profile Profile)[] profiles) => JsonOutput.Write(json =>
    {
        json.WriteStartObject();
        json.WriteStartArray("profiles");
        foreach (var (from, profile) in profiles)
        {
            json.WriteStartObject();
            json.WriteString("id", profile.Id);
            json.WriteString("version", profile.Version);
            json.WriteString("title", profile.Title);
            json.WriteString("status", Word.Of(profile.Status));
            json.WriteString("digest", profile.Digest);
            json.WriteString("from", from);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    });
}
