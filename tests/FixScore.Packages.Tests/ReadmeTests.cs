using System.Text.RegularExpressions;

namespace FixScore.Packages.Tests;

/// <summary>What the README shows is what runs.</summary>
public sealed partial class ReadmeTests
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
    public void The_two_commands_at_the_top_are_the_demo_and_the_tests_and_continuous_integration_runs_the_latter()
    {
        Assert.Contains("```\ndotnet run --project src/FixScore.Cli -- demo\ndotnet test FixScore.sln\n```", Readme, StringComparison.Ordinal);
        Assert.Contains("\ndotnet test FixScore.sln ", Repository.Text(".ci/run"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_demo_and_every_other_command_run()
    {
        var folder = Directory.CreateTempSubdirectory("fixscore-readme-").FullName;
        try
        {
            Assert.Contains("summary.html", Fixscore(folder, "demo", "--out", folder), StringComparison.Ordinal);
            var commands = Command().Matches(Readme).Select(match => match.Groups[1].Value).ToArray();
            Assert.Equal(3, commands.Length);
            foreach (var command in commands) Assert.NotEmpty(Fixscore(folder, command.Split(' ')));
            Assert.Contains("fixscore-record/1", Fixscore(folder, "new", "record"), StringComparison.Ordinal);
            Assert.Contains("fixscore-profile/1", Fixscore(folder, "new", "profile"), StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    static string Fixscore(string folder, params string[] arguments) => Repository.Run(
        folder, "dotnet", ["run", "--project", Path.Combine(Repository.Copy, "src/FixScore.Cli"), "-c", "Release", "--", .. arguments]);

    [GeneratedRegex("```csharp")]
    private static partial Regex Snippet();

    [GeneratedRegex(@"(?m)^fixscore (.+)$")]
    private static partial Regex Command();
}
