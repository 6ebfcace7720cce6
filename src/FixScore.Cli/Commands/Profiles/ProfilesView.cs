using System.Text.Json;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Profiles;

/// <summary>Profiles as text or JSON.</summary>
sealed class ProfilesView(CommandSession session)
{
    public void Show((string From, Profile Profile)[] profiles)
    {
        if (session.AsJson) session.Write(null, JsonOutput.Write(json => Json(json, profiles)));
        else session.Canvas.Table([("Profile", false), ("Version", false), ("Title", false), ("Status", false), ("From", false)],
            profiles.Select(each => (string[])[each.Profile.Id, each.Profile.Version, each.Profile.Title, Word.Of(each.Profile.Status), each.From]));
    }

    static void Json(Utf8JsonWriter json, (string From, Profile Profile)[] profiles)
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
    }
}
