using System.Text.Json;
using FixScore.Cli.Files;

namespace FixScore.Cli.Commands.Validate;

/// <summary>Problems as JSON.</summary>
static class ProblemsJson
{
    public static byte[] Of(IEnumerable<CheckedFile> files) => JsonOutput.Write(json =>
    {
        json.WriteStartObject();
        json.WriteStartArray("problems");
        foreach (var file in files)
            foreach (var problem in file.Problems) Problem(json, file.File, problem);
        json.WriteEndArray();
        json.WriteEndObject();
    });

    static void Problem(Utf8JsonWriter json, string file, LocatedProblem located)
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
