using System.Text.RegularExpressions;

namespace FixScore.Packages.Tests.Authors;

/// <summary>The guide for authors, followed from top to bottom: commands are run, the list of pins is written with the pin that the tool printed.</summary>
sealed partial class AuthorGuide
{
    public const string Page = "docs/author-a-criterion.md";

    public static readonly string Text = Repository.Text(Page);

    readonly List<Step> steps = [];
    readonly List<(string Kind, string Text, string Before)> blocks = [];

    public AuthorGuide(Author author)
    {
        Author = author;
        foreach (Match block in Block().Matches(Text)) Follow(block.Groups["kind"].Value, block.Groups["text"].Value);
    }

    public Author Author { get; }

    /// <summary>All commands, in order. The first that fails unexpectedly makes later ones fail.</summary>
    public IReadOnlyList<Step> Steps => steps;

    /// <summary>All blocks, each with what the last command before it printed.</summary>
    public IReadOnlyList<(string Kind, string Text, string Before)> Blocks => blocks;

    public IEnumerable<(string Text, string Before)> BlocksOf(string kind) => blocks.Where(block => block.Kind == kind).Select(block => (block.Text, block.Before));

    public string PathOf(string file) => Path.Combine(Author.Folder, file);

    void Follow(string kind, string text)
    {
        blocks.Add((kind, text, steps.Count == 0 ? "" : steps[^1].Output));
        if (kind == "") steps.AddRange(text.Split('\n').Select(Author.Do));
        if (kind == "json") File.WriteAllText(PathOf("pins.json"), text.Replace("64 hexadecimal digits", Digest().Match(steps[^1].Error).Value, StringComparison.Ordinal));
    }

    [GeneratedRegex(@"(?ms)^```(?<kind>\w*)\n(?<text>.*?)\n```$")]
    private static partial Regex Block();

    [GeneratedRegex("[0-9a-f]{64}")]
    private static partial Regex Digest();
}
