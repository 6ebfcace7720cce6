using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace FixScore.Packages.Tests.Authors;

/// <summary>What the template makes.</summary>
[Collection(PackedFeedCollection.Name)]
public sealed partial class TemplateTests(PackedFeed feed)
{
    const string Content = "content/fixscore-criterion";

    string Version => feed.Package("FixScore.Abstractions").Version;

    Author Author => feed.Guide.Author;

    [Fact]
    public void It_is_a_template_and_brings_nothing_that_was_built()
    {
        var package = feed.Package("FixScore.Templates");
        Assert.Equal("Template", package.Type);
        var folder = Path.Combine(Repository.Root, "templates/FixScore.Templates");
        Assert.Equal(
            Directory.GetFiles(Path.Combine(folder, "content"), "*", SearchOption.AllDirectories).Select(path => Path.GetRelativePath(folder, path).Replace('\\', '/')).Order(StringComparer.Ordinal),
            package.Entries.Where(entry => entry.StartsWith("content/", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
    }

    // Nobody keeps the version by hand: in the tree there is none.
    [Fact]
    public void It_builds_for_the_version_that_it_was_packed_with()
    {
        Assert.Equal("packed-version", DefaultVersion(Repository.Text($"templates/FixScore.Templates/{Content}/.template.config/template.json")));
        Assert.Equal(Version, DefaultVersion(Encoding.UTF8.GetString(feed.Package("FixScore.Templates").Read($"{Content}/.template.config/template.json"))));
        Assert.Contains($"<FixScoreVersion>{Version}</FixScoreVersion>", File.ReadAllText(feed.Guide.PathOf("Directory.Packages.props")), StringComparison.Ordinal);
    }

    [Fact]
    public void No_placeholder_is_left()
    {
        var folder = Start("Acme.Labels");
        Assert.All(Directory.GetFiles(folder, "*", SearchOption.AllDirectories), file => Assert.DoesNotMatch(Placeholder(), file + File.ReadAllText(file)));
        Assert.Contains("--plugin plugins/acme.labels/VERSION/lib/net10.0/Acme.Labels.dll", File.ReadAllText($"{folder}/README.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Its_test_libraries_are_those_of_the_house()
    {
        var house = Repository.Text("Directory.Packages.props");
        var libraries = Library().Matches(Repository.Text($"templates/FixScore.Templates/{Content}/Directory.Packages.props"));
        Assert.Equal(3, libraries.Count);
        Assert.All(libraries, library => Assert.Contains(library.Value, house, StringComparison.Ordinal));
    }

    [Fact]
    public void The_package_of_a_plugin_holds_its_file_its_profile_and_its_readme_and_needs_the_contract_alone()
    {
        var package = new Package(feed.Guide.PathOf("packages/Acme.Screws.1.0.0.nupkg"));
        Assert.Equal(["lib/net10.0/Acme.Screws.dll", "lib/net10.0/Acme.Screws.xml"], package.Entries.Where(entry => entry.StartsWith("lib/", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        Assert.Contains("profiles/look-alike-screws.json", package.Entries);
        Assert.Contains("README.md", package.Entries);
        Assert.Equal(["FixScore.Abstractions"], package.Dependencies);
        Assert.Equal(Version, package.Element("dependency")!.Attribute("version")!.Value);
        Assert.True(File.Exists(package.SymbolsPath));
    }

    [Fact]
    public void A_name_without_a_dot_works_and_is_the_prefix()
    {
        var folder = Start("Marking");
        Author.Succeed($"dotnet publish {folder}/src/Marking --output {folder}/published");
        Assert.Contains("marking.look-alike-screws: ", Author.Succeed($"fixscore criteria --plugin {folder}/published/Marking.dll --trust-once"), StringComparison.Ordinal);
        Assert.Contains("\"criterion\": \"marking.look-alike-screws\"", File.ReadAllText($"{folder}/profiles/look-alike-screws.json"), StringComparison.Ordinal);
    }

    // A hyphen may stand in a package's name and in an id, not in a namespace. The library is one that the tool itself does not use.
    [Fact]
    public void A_plugin_with_a_hyphen_and_a_dependency_is_refused_alone_and_works_in_the_folder_that_was_published()
    {
        var folder = Start("acme-marking");
        Author.Succeed($"dotnet package add CsCheck --project {folder}/src/acme-marking/acme-marking.csproj");
        File.WriteAllText($"{folder}/src/acme-marking/Borrowed.cs", "static class Borrowed { public static string Name => typeof(CsCheck.Gen).Name; }");
        Author.Succeed($"dotnet publish {folder}/src/acme-marking --output {folder}/published");
        Assert.Contains("acme-marking.look-alike-screws: ", Author.Succeed($"fixscore criteria --plugin {folder}/published/acme-marking.dll --trust-once"), StringComparison.Ordinal);
        Assert.Contains("\"CsCheck.dll\": \"", Author.Do($"fixscore criteria --plugin {folder}/published/acme-marking.dll").Error, StringComparison.Ordinal);
        File.Copy($"{folder}/published/acme-marking.dll", $"{folder}/acme-marking.dll");
        Assert.Contains("plugin-dependency-missing", Author.Do($"fixscore criteria --plugin {folder}/acme-marking.dll --trust-once").Error, StringComparison.Ordinal);
    }

    string Start(string name)
    {
        var folder = Author.NewFolder(name);
        Author.Succeed($"dotnet new fixscore-criterion -n {name} --output {folder}");
        return folder;
    }

    static string? DefaultVersion(string config)
    {
        using var template = JsonDocument.Parse(config);
        return template.RootElement.GetProperty("symbols").GetProperty("fixscoreVersion").GetProperty("defaultValue").GetString();
    }

    [GeneratedRegex("(?i)plugin-?name|plugin-vendor|fixscore-version|packed-version|date-of-today")]
    private static partial Regex Placeholder();

    [GeneratedRegex("""<PackageVersion Include="[^"]+" Version="[0-9.]+" />""")]
    private static partial Regex Library();
}
