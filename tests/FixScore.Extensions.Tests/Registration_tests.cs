using FixScore.Canonical;
using FixScore.Criteria.Documentation;
using Microsoft.Extensions.DependencyInjection;

namespace FixScore.Extensions.Tests;

public sealed class Registration_tests : IDisposable
{
    readonly Workspace workspace = new Workspace().WithProfile("papers");

    [Fact]
    public void Settings_of_a_file_give_a_desk_that_scores()
    {
        var file = workspace.Write("settings.json", $$"""
            { "FixScore": { "profileFolders": ["rules"], "defaultProfile": "papers", "plugins": [{ "file": "{{Workspace.PluginFile}}", "sha256": "{{Digest.Of(File.ReadAllBytes(Workspace.PluginFile))}}" }] } }
            """);
        using var services = new ServiceCollection().AddFixScoreFromFile(file).BuildServiceProvider();

        var score = services.GetRequiredService<ScoringDesk>().ScoreFile(Workspace.Record);

        Assert.Equal("papers", score.Profile.Id);
        var plugin = Assert.Single(score.Plugins);
        Assert.Equal("FixScore.Criteria.Documentation", plugin.Id);
        Assert.StartsWith("sha256:", plugin.Digest, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_in_code_gives_the_same_score()
    {
        using var services = new ServiceCollection()
            .AddFixScore(setup: setup => { setup.BaseFolder = workspace.Folder; setup.AddProfileFolder("rules").UseProfile("papers"); })
            .AddFixScorePlugin<DocumentationPlugin>()
            .BuildServiceProvider();
        var catalogue = Catalogue.Of(new DocumentationPlugin());
        var profile = ProfileFile.Load(Path.Combine(workspace.Folder, "rules/papers-1.0.0.json"), catalogue);

        var score = services.GetRequiredService<ScoringDesk>().ScoreFile(Workspace.Record);

        Assert.Equal(Scorer.Score(RecordFile.Load(Workspace.Record, catalogue), profile).ToJson(), score.ToJson());
    }

    [Fact]
    public void Repeats_are_harmless()
    {
        var settings = Workspace.Settings("""{ "profileFolders": ["rules"] }""");
        var services = new ServiceCollection();
        for (var i = 0; i < 3; i++)
            services.AddFixScorePlugin<DocumentationPlugin>().AddFixScore(settings, setup => setup.BaseFolder = workspace.Folder);

        using var provider = services.BuildServiceProvider();

        Assert.Single(provider.GetServices<Catalogue>());
        Assert.Single(provider.GetServices<ScoringDesk>());
        Assert.Single(provider.GetServices<IPlugin>());
        Assert.Equal(Path.Combine(workspace.Folder, "rules"), Assert.Single(provider.GetRequiredService<FixScoreSettings>().ProfileFolders));
    }

    [Fact]
    public void A_plugin_that_is_compiled_in_and_named_as_a_file_is_installed_once()
    {
        using var provider = new ServiceCollection().AddFixScorePlugin<DocumentationPlugin>()
            .AddFixScore(setup: setup => { setup.AddPluginFile(Workspace.PluginFile); setup.PluginTerms = Workspace.Trusting; }).BuildServiceProvider();

        Assert.Equal(["documentation", "repair-information"], provider.GetRequiredService<Catalogue>().Criteria.Select(each => each.Item.Info.Id));
    }

    [Fact]
    public void Calls_add_up_and_the_last_default_profile_holds()
    {
        workspace.WithProfile("other");
        using var provider = new ServiceCollection().AddFixScorePlugin<DocumentationPlugin>()
            .AddFixScore(Workspace.Settings("""{ "profileFolders": ["rules"], "defaultProfile": "papers" }"""), setup => setup.BaseFolder = workspace.Folder)
            .AddFixScore(setup: setup => setup.UseProfile("other"))
            .BuildServiceProvider();

        Assert.Equal("other", provider.GetRequiredService<ScoringDesk>().Profile().Id);
        Assert.Equal("papers", provider.GetRequiredService<ScoringDesk>().Profile("papers@1.0.0").Id);
    }

    [Fact]
    public void The_section_itself_is_as_good_as_what_holds_it_and_keys_have_no_case()
    {
        var section = Workspace.Settings("""{ "ProfileFolders": ["rules"], "DEFAULTPROFILE": "papers" }""").GetSection("FixScore");
        using var provider = new ServiceCollection().AddFixScorePlugin<DocumentationPlugin>()
            .AddFixScore(section, setup => setup.BaseFolder = workspace.Folder).BuildServiceProvider();

        Assert.Equal("papers", provider.GetRequiredService<FixScoreSettings>().DefaultProfile);
    }

    [Fact]
    public void Without_settings_everything_is_empty_but_there()
    {
        using var provider = new ServiceCollection().AddFixScore().BuildServiceProvider();

        Assert.Empty(provider.GetRequiredService<Catalogue>().Criteria);
        Assert.Empty(provider.GetRequiredService<ProfileLibrary>().Entries);
        Assert.Null(provider.GetRequiredService<FixScoreSettings>().DefaultProfile);
    }

    [Fact]
    public void Two_collections_share_nothing()
    {
        using var first = new ServiceCollection().AddFixScore(setup: setup => setup.AddProfileFolder(Path.Combine(workspace.Folder, "rules"))).BuildServiceProvider();
        using var second = new ServiceCollection().AddFixScore().BuildServiceProvider();

        Assert.Single(first.GetRequiredService<ProfileLibrary>().Entries);
        Assert.Empty(second.GetRequiredService<ProfileLibrary>().Entries);
    }

    public void Dispose() => workspace.Dispose();
}
