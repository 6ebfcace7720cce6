using System.Text.RegularExpressions;

namespace FixScore.Packages.Tests;

/// <summary>What the README shows is what runs.</summary>
[Collection(PackedFeedCollection.Name)]
public sealed partial class ReadmeTests(PackedFeed feed)
{
    static readonly string Readme = Repository.Text("README.md");

    [Theory]
    [InlineData("ScoreARecord/Program.cs")]
    [InlineData("CustomCriterion/PartMarking.cs")]
    [InlineData("TwoProfiles/Program.cs")]
    public void Each_snippet_is_a_program_that_is_built_and_run(string program) =>
        Assert.Contains("```csharp\n" + Repository.Text("tests/FixScore.Packages.Tests/Consumers/" + program).TrimEnd() + "\n```", Readme, StringComparison.Ordinal);

    [Fact]
    public void There_are_no_other_snippets() => Assert.Equal(3, Snippet().Count(Readme));

    [Fact]
    public void The_first_code_comes_within_80_words() =>
        Assert.True(Readme[..Readme.IndexOf("```", StringComparison.Ordinal)].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length < 80);

    [Fact]
    public void The_first_command_runs_the_demo()
    {
        var folder = feed.FolderWithRecords();
        Repository.Run(Repository.Copy, "dotnet", "run", "--project", "src/FixScore.Cli", "--", "demo", "--out", folder);
        Assert.True(File.Exists(Path.Combine(folder, "report.html")));
        // The pictures shown are those that it makes.
        foreach (var picture in (string[])["ranking.svg", "routes.svg"])
            Assert.Equal(Repository.Text($"src/FixScore.Cli/Demo/{picture}"), File.ReadAllText(Path.Combine(folder, picture)));
    }

    [Fact]
    public void The_two_commands_at_the_top_are_the_demo_and_the_tests_and_continuous_integration_runs_the_latter()
    {
        Assert.Contains("```\ndotnet run --project src/FixScore.Cli -- demo\ndotnet test FixScore.sln\n```", Readme, StringComparison.Ordinal);
        Assert.Matches(@"(?m)^dotnet test FixScore\.sln( |$)", Repository.Text(".ci/run"));
    }

    [Fact]
    public void Every_other_command_runs_in_order()
    {
        var folder = feed.FolderWithRecords();
        var commands = Command().Matches(Readme).Select(match => match.Groups[1].Value.TrimEnd()).ToArray();
        Assert.NotEmpty(commands);
        Assert.All(commands, command => Assert.NotEmpty(feed.Fixscore(folder, command.Split(' '))));
        Assert.Contains("fixscore-record/1", feed.Fixscore(folder, "new", "record"), StringComparison.Ordinal);
        Assert.Contains("fixscore-profile/1", feed.Fixscore(folder, "new", "profile"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    [InlineData("CHANGELOG.md")]
    public void Every_file_it_links_to_is_there(string page) =>
        Assert.All(Link().Matches(Repository.Text(page)), link => Assert.True(Path.Exists(Path.Combine(Repository.Root, link.Groups[1].Value)), link.Value));

    [GeneratedRegex("```csharp")]
    private static partial Regex Snippet();

    [GeneratedRegex(@"(?m)^fixscore (.+)$")]
    private static partial Regex Command();

    [GeneratedRegex(@"\]\((?!https?:)([^)#]+)\)")]
    private static partial Regex Link();
}
