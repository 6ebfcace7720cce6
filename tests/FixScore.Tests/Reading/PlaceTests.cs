using System.Text.Json;
using Json.Pointer;

namespace FixScore.Tests.Reading;

/// <summary>Line and column are where the pointer leads; checked with another implementation of pointers.</summary>
public sealed class PlaceTests
{
    static readonly string[] AboutNames = ["unknown-member", "duplicate-member"];

    public static TheoryData<string> Names => [.. Corpus.Files.Where(file => !file.Syntax && file.Problems.Length > 0).Select(file => file.File)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_text_at_the_place_is_what_the_pointer_leads_to(string name)
    {
        var file = Corpus.Named(name);
        if (file.Problems.Any(problem => problem.What.Contains("deep", StringComparison.Ordinal))) return;
        using var document = JsonDocument.Parse(file.Bytes);
        Assert.All(file.Read().Problems, problem => Assert.StartsWith(Expected(document.RootElement, problem.Problem), TextAt(file, problem), StringComparison.Ordinal));
    }

    static string TextAt(CorpusFile file, LocatedProblem problem) => System.Text.Encoding.UTF8.GetString(file.Bytes).Split('\n')[problem.Line - 1][(problem.Column - 1)..];

    // Names are told by their own places; other problems by their values, of which a line shows the beginning.
    static string Expected(JsonElement root, Problem problem)
    {
        if (Array.IndexOf(AboutNames, problem.Code) >= 0) return "\"";
        return JsonPointer.Parse(problem.At.Text).Evaluate(root) is { } value ? value.GetRawText().Split('\n')[0] : "{";
    }

    // The places counted by hand.
    [Theory]
    [InlineData("records/type-id.json", 3, 9)]
    [InlineData("records/near-miss-scew.json", 30, 7)]
    [InlineData("records/dangling-after-nested.json", 41, 72)]
    [InlineData("records/comment-line.json", 2, 3)]
    public void Places_are_those_that_an_editor_shows(string name, int line, int column)
    {
        var (_, problems) = Corpus.Named(name).Read();
        Assert.Equal((line, column), (problems[0].Line, problems[0].Column));
    }
}
