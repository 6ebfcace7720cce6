using System.Text.Json;

namespace FixScore.Acceptance.Tests;

/// <summary>Faults that take a search for routes, or what swap trials prove, are found by the installed checks.</summary>
public sealed class CorpusTests
{
    static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Corpus");

    [Fact]
    public void Faults_that_the_reader_alone_cannot_see_are_found_where_they_are()
    {
        var stated = Stated().ToArray();
        Assert.True(stated.Length >= 8);
        var run = Fixscore.Run(["validate", .. stated.Select(fault => fault.File).Distinct(), "--json"]);
        Assert.Equal(3, run.Code);
        var found = Found(run.Out).ToHashSet();
        Assert.All(stated, fault => Assert.Contains(fault, found));
    }

    static IEnumerable<(string File, string Severity, string Pointer)> Stated()
    {
        using var manifest = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Folder, "manifest.json")));
        foreach (var file in manifest.RootElement.EnumerateArray())
            foreach (var problem in file.GetProperty("problems").EnumerateArray())
                if (problem.TryGetProperty("needs", out _))
                    yield return (Path.Combine(Folder, file.GetProperty("file").GetString()!), Severity(problem), problem.GetProperty("pointer").GetString()!);
    }

    static IEnumerable<(string File, string Severity, string Pointer)> Found(string output)
    {
        using var document = JsonDocument.Parse(output);
        foreach (var problem in document.RootElement.GetProperty("problems").EnumerateArray())
            yield return (problem.GetProperty("file").GetString()!, Severity(problem), problem.GetProperty("pointer").GetString()!);
    }

    static string Severity(JsonElement problem) => problem.TryGetProperty("severity", out var severity) ? severity.GetString()! : "error";
}
