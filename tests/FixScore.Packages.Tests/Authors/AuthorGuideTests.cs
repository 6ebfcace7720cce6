using System.Text.Json;
using System.Text.RegularExpressions;

namespace FixScore.Packages.Tests.Authors;

/// <summary>What the guide for authors shows is what runs.</summary>
[Collection(PackedFeedCollection.Name)]
public sealed partial class AuthorGuideTests(PackedFeed feed)
{
    const string Downloaded = "plugins/acme.screws/1.0.0/lib/net10.0/Acme.Screws.dll";

    AuthorGuide Guide => feed.Guide;

    [Fact]
    public void Every_command_succeeds_but_the_use_of_a_plugin_that_is_not_pinned()
    {
        Assert.NotEmpty(Guide.Steps);
        var failed = Guide.Steps.Where(step => step.Code != 0).ToArray();
        Assert.True(failed is [{ Code: 4 }], string.Join('\n', failed.Select(step => step.ToString())));
        Assert.Equal($"fixscore criteria --plugin {Downloaded}", failed[0].Line);
        Assert.Contains("It runs with your rights.", failed[0].Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_piece_of_code_stands_in_what_the_template_makes()
    {
        var code = Directory.GetFiles(Guide.Author.Folder, "LookAlike*.cs", SearchOption.AllDirectories).Select(path => File.ReadAllText(path).ReplaceLineEndings("\n")).ToArray();
        Assert.Equal(3, Guide.BlocksOf("csharp").Count());
        Assert.All(Guide.BlocksOf("csharp"), block => Assert.Contains(code, file => file.Contains(block.Text, StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_answer_is_what_the_tool_says()
    {
        Assert.Equal(2, Guide.BlocksOf("text").Count());
        Assert.All(Guide.BlocksOf("text"), block => Assert.Contains(block.Text, block.Before, StringComparison.Ordinal));
    }

    [Fact]
    public void There_are_no_other_blocks() =>
        Assert.Equal(["", "csharp", "json", "text"], Guide.Blocks.Select(block => block.Kind).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void The_tests_of_a_new_plugin_pass() =>
        Assert.Matches(@"Passed! +- Failed: +0, Passed: +3, Skipped: +0", Guide.Steps.Single(step => step.Line == "dotnet test").Output);

    [Fact]
    public void The_tool_loads_the_file_from_the_package() => Assert.Contains(
        "acme.look-alike-screws: Look-alike screws", Guide.Author.Succeed($"fixscore criteria --plugin {Downloaded} --trust-once"), StringComparison.Ordinal);

    [Fact]
    public void The_file_in_the_package_is_the_one_that_was_tried_and_its_digest_is_in_the_score()
    {
        var digest = DigestOf(Downloaded);
        Assert.Equal(DigestOf("published/Acme.Screws.dll"), digest);
        using var score = JsonDocument.Parse(File.ReadAllText(Guide.PathOf("slate.score.json")));
        var plugin = Assert.Single(score.RootElement.GetProperty("plugins").EnumerateArray());
        Assert.Equal(("Acme.Screws", "1.0.0", $"sha256:{digest}"),
            (plugin.GetProperty("id").GetString(), plugin.GetProperty("version").GetString(), plugin.GetProperty("digest").GetString()));
    }

    [Fact]
    public void Built_again_in_another_folder_it_has_the_same_digest()
    {
        var elsewhere = Guide.Author.NewFolder("elsewhere");
        Repository.CopyFolder(Guide.Author.Folder, elsewhere);
        Guide.Author.Succeed($"dotnet publish {elsewhere}/src/Acme.Screws --output {elsewhere}/again");
        Assert.Equal(DigestOf("published/Acme.Screws.dll"), DigestOf($"{elsewhere}/again/Acme.Screws.dll"));
    }

    // At 130 words a minute, code included, that is nine minutes.
    [Fact]
    public void It_has_under_1200_words() => Assert.True(AuthorGuide.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length < 1200);

    [Fact]
    public void Every_file_it_links_to_is_there() =>
        Assert.All(Link().Matches(AuthorGuide.Text), link => Assert.True(Path.Exists(Path.Combine(Repository.Root, "docs", link.Groups[1].Value)), link.Value));

    string DigestOf(string file) => Repository.DigestOf(Guide.PathOf(file));

    [GeneratedRegex(@"\]\((?!https?:)([^)#]+)[^)]*\)")]
    private static partial Regex Link();
}
