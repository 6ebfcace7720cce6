using System.Text.RegularExpressions;

namespace FixScore.Architecture.Tests;

/// <summary>Files are small, alike and complete.</summary>
public sealed partial class Files_tests
{
    static readonly string[] Code = [.. new[] { "src", "plugins", "templates", "tests", "benchmarks", "samples" }.SelectMany(folder => House.Files(folder, "*.cs"))];

    [Fact]
    public void No_file_has_over_300_lines() => Assert.DoesNotContain(Code, path => House.Lines(path).Length > 300);

    [Fact]
    public void Half_of_the_files_have_under_60_lines()
    {
        var lengths = Code.Select(path => House.Lines(path).Length).Order().ToArray();
        Assert.True(lengths[lengths.Length / 2] < 60, $"The median is {lengths[lengths.Length / 2]}.");
    }

    [Fact]
    public void Every_family_of_criteria_has_a_plugin_and_every_criterion_options_facts_and_reasons()
    {
        var families = House.Plugins.Where(room => room.StartsWith("FixScore.Criteria.", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(families);
        Assert.Empty(families.SelectMany(room => Lacking($"plugins/{room}")));
    }

    [Fact]
    public void What_a_criterion_suggests_stands_beside_it() =>
        Assert.Empty(House.Plugins.Select(room => $"plugins/{room}").SelectMany(room => Names(room).Where(name => name.EndsWith("Changes", StringComparison.Ordinal))
            .Where(name => !Names(room).Contains(name[..^"Changes".Length] + "Criterion"))));

    [Theory]
    [InlineData("Plugin")]
    [InlineData("Requirements")]
    [InlineData("Reasons")]
    public void Every_body_of_law_has_a_plugin_sets_of_requirements_and_reasons(string kind) => Assert.DoesNotContain(House.Plugins,
        room => room.StartsWith("FixScore.Requirements.", StringComparison.Ordinal) && !Names($"plugins/{room}").Any(name => name.EndsWith(kind, StringComparison.Ordinal)));

    [Fact]
    public void Every_project_is_in_the_solution()
    {
        var solution = House.Text("FixScore.sln").Replace('\\', '/');
        var projects = new[] { "src", "plugins", "templates", "tests", "benchmarks", "samples", "scoring-profiles" }.SelectMany(House.Projects).Where(path => !IsBuiltElsewhere(path));
        Assert.DoesNotContain(projects, path => !solution.Contains($"\"{path}\"", StringComparison.Ordinal));
    }

    [Fact]
    public void A_template_has_the_files_of_a_family()
    {
        var sources = House.Files("templates", "*Criterion.cs").Select(path => Path.GetDirectoryName(path)!).ToArray();
        Assert.NotEmpty(sources);
        Assert.Empty(sources.SelectMany(Lacking));
    }

    [Fact]
    public void No_test_is_empty() =>
        Assert.Empty(House.Files("tests", "*.cs").SelectMany(path => EmptyTest().Matches(House.Text(path)).Select(match => $"{path}: {match.Groups["name"]}")));

    [Theory]
    [InlineData("[Fact]\npublic void Empty() { }")]
    [InlineData("[Theory]\n[InlineData(\"(\")]\npublic async Task Empty(int one)\n{\n    // later\n}")]
    public void The_search_finds_an_empty_test(string code) => Assert.Matches(EmptyTest(), code);

    [Theory]
    [InlineData("[Fact]\npublic void Full() { Assert.True(One()); }")]
    [InlineData("[Fact]\npublic void Full() => Assert.True(One());")]
    public void The_search_passes_over_a_full_test(string code) => Assert.DoesNotMatch(EmptyTest(), code);

    static IEnumerable<string> Lacking(string folder)
    {
        var names = Names(folder);
        if (names.Count(name => name.EndsWith("Plugin", StringComparison.Ordinal)) != 1) yield return $"{folder}: one plugin";
        var criteria = names.Where(name => name.EndsWith("Criterion", StringComparison.Ordinal)).Select(name => name[..^"Criterion".Length]).ToArray();
        if (criteria.Length == 0) yield return $"{folder}: a criterion";
        foreach (var criterion in criteria)
            foreach (var sibling in (string[])["Options", "Facts", "Reasons"])
                if (!names.Contains(criterion + sibling)) yield return $"{folder}: {criterion}{sibling}";
    }

    // Packages have consumers, and templates make projects: both are built by tests, from packages.
    static bool IsBuiltElsewhere(string project) => project.Contains("/Consumers/", StringComparison.Ordinal) || project.Contains("/content/", StringComparison.Ordinal);

    static string[] Names(string folder) => [.. House.Files(folder, "*.cs").Select(path => Path.GetFileNameWithoutExtension(path))];

    [GeneratedRegex("""\[(Fact|Theory)\b[^\n]*\](\s*\[[^\n]*\])*\s*public\s+[\w<>\s]+?\s(?<name>\w+)\([^)]*\)\s*\{\s*(//[^\n]*\s*)*\}""")]
    private static partial Regex EmptyTest();
}
