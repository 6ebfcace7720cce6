using System.Text.Json;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Validate;

/// <summary>What is wrong with files: problems to standard error and a sentence for each file, or one JSON document.</summary>
sealed class ValidateView(CommandSession session)
{
    public void Show(CheckedFile[] checks)
    {
        if (session.AsJson) session.Write(null, JsonOutput.Write(json => Json(json, checks)));
        else
            foreach (var check in checks)
            {
                session.Problems.Print(check.File, check.Problems);
                session.Canvas.Line($"{check.File}: {check.Summary}");
            }
    }

    static void Json(Utf8JsonWriter json, CheckedFile[] checks)
    {
        json.WriteStartObject();
        json.WriteStartArray("problems");
        foreach (var check in checks)
            foreach (var problem in check.Problems) Json(json, check.File, problem);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    static void Json(Utf8JsonWriter json, string file, LocatedProblem located)
    {
        json.WriteStartObject();
        json.WriteString("file", file);
        json.WriteString("code", located.Problem.Code);
        json.WriteString("severity", Word.Of(located.Problem.Severity));
        json.WriteString("pointer", located.Problem.At.Text);
        json.WriteNumber("line", located.Line);
        json.WriteNumber("column", located.Column);
        json.WriteString("message", located.Problem.Message);
        json.WriteString("hint", located.Problem.Hint);
        json.WriteEndObject();
    }
}
