using System.Text.Json;

namespace FixScore.Mutants;

/// <summary>One change of the program.</summary>
/// <param name="Id">Its number in the assembly.</param>
/// <param name="File">The file, from the folder of the project.</param>
/// <param name="Line">The line, from one.</param>
/// <param name="Kind">What was done.</param>
/// <param name="Text">What stands there instead.</param>
sealed record Mutant(int Id, string File, int Line, string Kind, string Text);

/// <summary>Reads which mutants are in the assembly from the report of the open mutation testing schema.</summary>
static class MutationReport
{
    public static Mutant[] Read(string file)
    {
        using var report = JsonDocument.Parse(File.ReadAllText(file));
        var root = report.RootElement.GetProperty("projectRoot").GetString() ?? "";
        return [.. report.RootElement.GetProperty("files").EnumerateObject().SelectMany(
            place => place.Value.GetProperty("mutants").EnumerateArray().Where(IsIn).Select(mutant => Of(Path.GetRelativePath(root, place.Name), mutant)))
            .OrderBy(mutant => mutant.Id)];
    }

    // Mutants that did not compile, or lie in a block that another one takes away, are not in the assembly or not counted.
    static bool IsIn(JsonElement mutant) => mutant.GetProperty("status").GetString() is not ("CompileError" or "Ignored");

    static Mutant Of(string file, JsonElement mutant) => new(
        int.Parse(mutant.GetProperty("id").GetString()!, System.Globalization.CultureInfo.InvariantCulture),
        file,
        mutant.GetProperty("location").GetProperty("start").GetProperty("line").GetInt32(),
        mutant.GetProperty("mutatorName").GetString() ?? "",
        mutant.GetProperty("replacement").GetString() ?? "");
}
