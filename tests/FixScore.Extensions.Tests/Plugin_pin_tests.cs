using System.Collections.Immutable;
using System.Security.Cryptography;
using FixScore.Tests.Samples;
using Microsoft.Extensions.DependencyInjection;

namespace FixScore.Extensions.Tests;

/// <summary>SHA-256 as FIPS 180-4 defines it, over the whole file.</summary>
public sealed class Plugin_pin_tests : IDisposable
{
    readonly Workspace workspace = new();
    readonly string plugin;
    readonly string library;

    public Plugin_pin_tests()
    {
        plugin = SamplePlugins.Copy(SamplePlugins.Marks, Path.Combine(workspace.Folder, "acme"));
        library = Path.Combine(workspace.Folder, "acme", "Acme.Units.dll");
    }

    [Theory]
    [InlineData("")]
    [InlineData("sha256:")]
    public void A_plugin_that_is_pinned_with_all_it_brings_is_loaded(string prefix) =>
        Assert.Single(new CatalogueBuilder().AddFile(new(plugin, prefix + Sha(plugin).ToUpperInvariant()) { Dependencies = Pinned(library) }).Build().Criteria);

    [Fact]
    public void A_plugin_that_is_not_pinned_is_refused_and_the_pins_are_told()
    {
        var problem = Assert.Single(Refused(new(plugin)));

        Assert.Equal("plugin-unpinned", problem.Code);
        Assert.Contains($"\"sha256\": \"{Sha(plugin)}\"", problem.Hint, StringComparison.Ordinal);
        Assert.Contains($"\"Acme.Units.dll\": \"{Sha(library)}\"", problem.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void The_pins_that_are_told_are_a_list_that_loads()
    {
        var hint = Assert.Single(Refused(new(plugin))).Hint;
        var list = PluginList.Read(System.Text.Encoding.UTF8.GetBytes($$"""{ "plugins": [{{hint[hint.IndexOf("{", StringComparison.Ordinal)..]}}] }"""), workspace.Folder).OrThrow();

        Assert.Single(new CatalogueBuilder().AddFile(Assert.Single(list.Plugins)).Build().Criteria);
    }

    [Fact]
    public void A_byte_more_is_another_file()
    {
        var request = new PluginRequest(plugin, Sha(plugin)) { Dependencies = Pinned(library) };
        File.AppendAllBytes(plugin, [0]);

        var problem = Assert.Single(Refused(request));

        Assert.Equal("plugin-changed", problem.Code);
        Assert.Contains($"its SHA-256 is {Sha(plugin)}, the pin says {request.Sha256}", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_plugin_brings_along_is_pinned_as_well()
    {
        var request = new PluginRequest(plugin, Sha(plugin)) { Dependencies = Pinned(library) };
        Assert.Equal(["plugin-dependency-unpinned"], Refused(new(plugin, request.Sha256)).Select(problem => problem.Code));

        File.AppendAllBytes(library, [0]);
        Assert.Equal(["plugin-dependency-changed"], Refused(request).Select(problem => problem.Code));
    }

    [Fact]
    public void Who_trusts_once_gets_the_file_as_it_is() =>
        Assert.Single(new CatalogueBuilder().AddFile(new(plugin, new string('0', 64)), Workspace.Trusting).Build().Criteria);

    [Fact]
    public void A_file_that_is_changed_after_it_was_read_changes_nothing()
    {
        var catalogue = Bench.With(plugin);
        File.WriteAllText(library, "text");
        File.WriteAllText(plugin, "text");
        Assert.Equal(3m, Bench.Score(catalogue, ScoringMode.Strict, "acme.marks").Total.Low);
    }

    [Fact]
    public void Settings_pin_plugins_and_refuse_the_others()
    {
        using var pinned = Provider($$"""{ "plugins": [{ "file": "acme/Acme.Marks.dll", "sha256": "{{Sha(plugin)}}", "dependencies": { "Acme.Units.dll": "{{Sha(library)}}" } }] }""");
        Assert.Single(pinned.GetRequiredService<Catalogue>().Criteria);

        using var not = Provider("""{ "plugins": ["acme/Acme.Marks.dll", { "file": "acme/Acme.Marks.dll", "sha256": "12", "dependency": {} }] }""");
        Assert.Equal(
            [("settings-key-unknown", "/FixScore/plugins/1/dependency"), ("settings-wrong-digest", "/FixScore/plugins/1/sha256"), ("plugin-changed", "/FixScore/plugins/1"), ("plugin-dependency-unpinned", "/FixScore/plugins/1")],
            Assert.Throws<InvalidSettingsException>(not.GetRequiredService<Catalogue>).Problems.Select(problem => (problem.Code, problem.At.Text)));
    }

    [Fact]
    public void Code_can_trust_what_is_not_pinned()
    {
        using var provider = new ServiceCollection().AddFixScore(Workspace.Settings("""{ "plugins": ["acme/Acme.Marks.dll"] }"""), setup => (setup.BaseFolder, setup.PluginTerms) = (workspace.Folder, Workspace.Trusting)).BuildServiceProvider();
        Assert.Single(provider.GetRequiredService<Catalogue>().Criteria);
    }

    public void Dispose() => workspace.Dispose();

    ServiceProvider Provider(string section) =>
        new ServiceCollection().AddFixScore(Workspace.Settings(section), setup => setup.BaseFolder = workspace.Folder).BuildServiceProvider();

    static ImmutableArray<Problem> Refused(PluginRequest request) => Assert.Throws<PluginFileException>(() => new CatalogueBuilder().AddFile(request)).Problems;

    static ImmutableSortedDictionary<string, string> Pinned(string file) => ImmutableSortedDictionary<string, string>.Empty.Add(Path.GetFileName(file), Sha(file));

    static string Sha(string file) => Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file)));
}
