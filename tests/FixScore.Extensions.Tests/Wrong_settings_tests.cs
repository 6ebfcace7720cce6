using FixScore.Criteria.Documentation;
using Microsoft.Extensions.DependencyInjection;

namespace FixScore.Extensions.Tests;

public sealed class Wrong_settings_tests : IDisposable
{
    readonly Workspace workspace = new Workspace().WithProfile("papers").WithProfile("strange", criterion: "acme.unheard-of");

    [Fact]
    public void All_problems_come_at_once_each_with_its_place()
    {
        workspace.Write("not-a-plugin.dll", "text");
        var problems = ProblemsOf("""
            { "profileFolder": ["rules"], "profileFolders": ["nowhere", "rules"], "plugins": ["missing.dll", "not-a-plugin.dll"], "defaultProfile": "paper" }
            """);

        Assert.Equal(
            [
                ("settings-key-unknown", "/FixScore/profileFolder"), ("settings-folder-missing", "/FixScore/profileFolders/0"),
                ("plugin-file-missing", "/FixScore/plugins/0"), ("plugin-not-an-assembly", "/FixScore/plugins/1"),
                ("settings-profile-unknown", "/FixScore/defaultProfile"),
            ],
            problems.Select(problem => (problem.Code, problem.At.Text)));
        Assert.Equal("Did you mean 'profileFolders'?", problems[0].Hint);
        Assert.Contains(Path.Combine(workspace.Folder, "nowhere"), problems[1].Message, StringComparison.Ordinal);
        Assert.Contains("missing.dll cannot be used. There is no such file.", problems[2].Message, StringComparison.Ordinal);
        Assert.Contains("It is not a .NET assembly.", problems[3].Message, StringComparison.Ordinal);
        Assert.Equal("Did you mean 'papers'?", problems[4].Hint);
    }

    [Fact]
    public void An_assembly_that_names_no_plugin_is_no_plugin_file() =>
        Assert.Contains("names no plugin", Assert.Single(ProblemsOf($$"""{ "plugins": ["{{typeof(Catalogue).Assembly.Location}}"] }""")).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("""{ "profileFolders": "rules" }""", "/FixScore/profileFolders")]
    [InlineData("""{ "profileFolders": { "a": "rules" } }""", "/FixScore/profileFolders")]
    [InlineData("""{ "plugins": [["a.dll"]] }""", "/FixScore/plugins/0")]
    [InlineData("""{ "plugins": [""] }""", "/FixScore/plugins/0")]
    [InlineData("""{ "plugins": [{ "sha256": "00" }] }""", "/FixScore/plugins/0")]
    [InlineData("""{ "plugins": "a.dll" }""", "/FixScore/plugins")]
    [InlineData("""{ "defaultProfile": ["papers"] }""", "/FixScore/defaultProfile")]
    [InlineData("\"rules\"", "/FixScore")]
    public void A_value_of_the_wrong_kind_is_named(string section, string at)
    {
        var problem = Assert.Single(ProblemsOf(section));
        Assert.Equal(("settings-wrong-kind", at), (problem.Code, problem.At.Text));
    }

    [Theory]
    [InlineData("""{ "profileFolders": [] }""")]
    [InlineData("""{ "defaultProfile": null, "plugins": null }""")]
    [InlineData("{}")]
    public void Empty_settings_are_well(string section) => Assert.Empty(ProblemsOf(section));

    [Fact]
    public void Without_any_profile_the_hint_says_how_to_add_some() =>
        Assert.Contains("'profileFolders'", Assert.Single(ProblemsOf("""{ "defaultProfile": "papers" }""")).Hint, StringComparison.Ordinal);

    [Fact]
    public void A_default_profile_that_cannot_be_used_says_why()
    {
        var problem = Assert.Single(ProblemsOf("""{ "profileFolders": ["rules"], "defaultProfile": "strange" }"""));
        Assert.Equal("settings-profile-invalid", problem.Code);
        Assert.Contains("acme.unheard-of", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_settings_file_that_is_missing_or_broken_is_named()
    {
        var broken = workspace.Write("broken.json", "{ \"FixScore\": ");
        Assert.Contains(broken, FromFile(broken), StringComparison.Ordinal);
        Assert.Contains("there is no such file", FromFile(Path.Combine(workspace.Folder, "none.json")), StringComparison.Ordinal);

        static string FromFile(string file)
        {
            using var provider = new ServiceCollection().AddFixScoreFromFile(file).BuildServiceProvider();
            return Assert.Single(Assert.Throws<InvalidSettingsException>(provider.GetRequiredService<Catalogue>).Problems).Message;
        }
    }

    [Fact]
    public void A_profile_asked_for_by_a_wrong_name_is_refused_with_the_nearest()
    {
        using var provider = Provider("""{ "profileFolders": ["rules"] }""");
        var desk = provider.GetRequiredService<ScoringDesk>();

        Assert.Contains("'papers'", Assert.Throws<UnknownProfileException>(() => desk.Profile("papres")).Message, StringComparison.Ordinal);
        Assert.Null(Assert.Throws<UnknownProfileException>(() => desk.Profile()).Name);
        Assert.Throws<InvalidDocumentException>(() => desk.Profile("strange"));
    }

    [Fact]
    public void The_exception_tells_every_problem_in_plain_words()
    {
        using var provider = Provider("""{ "profileFolders": ["nowhere"], "defaultprofil": "papers" }""");
        var text = Assert.Throws<InvalidSettingsException>(provider.GetRequiredService<ScoringDesk>).Message;

        Assert.Equal(
            $"""
            There is no setting 'defaultprofil'. Did you mean 'defaultProfile'? (/FixScore/defaultprofil)
            There is no folder {Path.Combine(workspace.Folder, "nowhere")} of profiles. Correct the path; relative paths start from the base folder. (/FixScore/profileFolders/0)
            """.ReplaceLineEndings("\n"), text);
    }

    IReadOnlyList<Problem> ProblemsOf(string section)
    {
        using var provider = Provider(section);
        try
        {
            provider.GetRequiredService<Catalogue>();
            return [];
        }
        catch (InvalidSettingsException failure)
        {
            return failure.Problems;
        }
    }

    ServiceProvider Provider(string section) => new ServiceCollection().AddFixScorePlugin<DocumentationPlugin>()
        .AddFixScore(Workspace.Settings(section), setup => setup.BaseFolder = workspace.Folder).BuildServiceProvider();

    public void Dispose() => workspace.Dispose();
}
