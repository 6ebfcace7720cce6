using System.Text.Json;
using FixScore.Cli.Files;
using FixScore.Cli.Terminal;

namespace FixScore.Cli.Commands.Verify;

/// <summary>What a verification found, as text or JSON.</summary>
sealed class VerifyView(CommandSession session)
{
    const int Most = 8;

    public void Show(Verification verification, bool hasOwnDigest)
    {
        if (session.AsJson) session.Write(null, JsonOutput.Write(json => Json(json, verification, hasOwnDigest)));
        else Text(session.Canvas, verification, hasOwnDigest);
    }

    static void Text(Canvas canvas, Verification verification, bool hasOwnDigest)
    {
        canvas.Heading(Word.Of(verification.Verdict));
        canvas.Line(verification.Verdict switch
        {
            Verdict.Identical => "Computed again, every member is the same.",
            Verdict.Equal => "Only versions of the kernel or of plugins, or text made for people, differ:",
            _ => "The first difference that counts:",
        });
        foreach (var difference in verification.Differences.Take(verification.Verdict == Verdict.Different ? 1 : Most))
        {
            canvas.Item(1, "", difference.At.Text);
            canvas.Item(2, "", $"given:    {(difference.Given.Length == 0 ? "nothing" : Plain.Text(difference.Given, 200))}");
            canvas.Item(2, "", $"computed: {(difference.Computed.Length == 0 ? "nothing" : Plain.Text(difference.Computed, 200))}");
        }
        if (!hasOwnDigest) canvas.Item(0, "!", "The document's digest is not that of its content: it was changed after it was made.");
    }

    static void Json(Utf8JsonWriter json, Verification verification, bool hasOwnDigest)
    {
        json.WriteStartObject();
        json.WriteString("verdict", Word.Of(verification.Verdict));
        json.WriteBoolean("digestFits", hasOwnDigest);
        json.WriteStartArray("differences");
        foreach (var difference in verification.Differences)
        {
            json.WriteStartObject();
            json.WriteString("pointer", difference.At.Text);
            json.WriteString("given", difference.Given);
            json.WriteString("computed", difference.Computed);
            json.WriteBoolean("counts", difference.Counts);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
