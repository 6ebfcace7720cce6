namespace FixScore.Packages.Tests;

/// <summary>The three uses of the README, built and run from the packages.</summary>
public sealed class ConsumerTests(PackedFeed feed) : IClassFixture<PackedFeed>
{
    static readonly string[] Criteria =
        ["FixScore.Criteria.Adhesives", "FixScore.Criteria.Documentation", "FixScore.Criteria.Fasteners", "FixScore.Criteria.Modularity", "FixScore.Criteria.Pairing"];

    static readonly string[] All = ["FixScore", "FixScore.Profiles", .. Criteria];

    [Fact]
    public void A_record_is_scored_and_says_why()
    {
        var output = feed.BuildAndRun("ScoreARecord", All);
        Assert.Matches(@"^[0-9.]+ to [0-9.]+ points\n", output);
        Assert.Contains("Fastener diversity: Screws of", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_custom_criterion_is_written_and_registered_in_under_30_lines_and_scores()
    {
        Assert.True(Repository.Text("tests/FixScore.Packages.Tests/Consumers/CustomCriterion/PartMarking.cs").TrimEnd().Split('\n').Length < 30);
        Assert.Contains("parts are marked.", feed.BuildAndRun("CustomCriterion", ["FixScore"]), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_profiles_judge_several_records_side_by_side()
    {
        var output = feed.BuildAndRun("TwoProfiles", All, "larkfield-slate-2.json", "larkfield-slate-3.json");
        Assert.Matches(@"^Slate 2: [0-9.]+ to [0-9.]+ for owners, [0-9.]+ to [0-9.]+ for workshops\nSlate 3: .* for workshops\n$", output);
    }

    [Fact]
    public void The_tool_installs_from_the_feed_and_runs_the_demo_in_an_empty_folder()
    {
        var folder = Directory.CreateTempSubdirectory("fixscore-tool-").FullName;
        try
        {
            Repository.Run(folder, "dotnet", "tool", "install", "FixScore.Cli", "--tool-path", "tools", "--add-source", feed.Feed, "--version", PackedFeed.VersionOf(feed.Package("FixScore.Cli")), "--no-cache");
            Assert.Contains("Four slate tablets", Repository.Run(folder, Path.Combine(folder, "tools", "fixscore"), "demo"), StringComparison.Ordinal);
            Assert.True(File.Exists(Path.Combine(folder, "fixscore-demo", "summary.html")));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Every_library_has_readme_licence_icon_documentation_and_symbols()
    {
        foreach (var package in feed.Packages)
        {
            var (id, entries) = (PackedFeed.NameOf(package), PackedFeed.Entries(package));
            Assert.Contains("README.md", entries);
            Assert.Contains("icon.png", entries);
            Assert.Equal("MIT", PackedFeed.Nuspec(package).Descendants().First(each => each.Name.LocalName == "license").Value);
            if (id is "FixScore.Profiles" or "FixScore.Cli") continue;
            Assert.Contains($"lib/net10.0/{id}.dll", entries);
            Assert.Contains($"lib/net10.0/{id}.xml", entries);
            Assert.True(File.Exists(Path.ChangeExtension(package, ".snupkg")), $"{id} has no symbols");
        }
    }

    [Fact]
    public void Dependencies_point_only_downward()
    {
        (string Package, string[] May)[] allowed =
        [
            ("FixScore.Abstractions", []),
            ("FixScore", ["FixScore.Abstractions"]),
            ("FixScore.Pairing", ["FixScore.Abstractions"]),
            ("FixScore.Testing", ["FixScore"]),
            ("FixScore.Reporting", ["FixScore"]),
            ("FixScore.Extensions", ["FixScore", "Microsoft.Extensions.Configuration.Json", "Microsoft.Extensions.DependencyInjection"]),
            .. Criteria.Select(id => (id, id.EndsWith("Pairing", StringComparison.Ordinal) ? (string[])["FixScore.Abstractions", "FixScore.Pairing"] : ["FixScore.Abstractions"])),
        ];
        foreach (var (package, may) in allowed.Where(each => feed.Packages.Select(PackedFeed.NameOf).Contains(each.Package)))
            Assert.Empty(PackedFeed.Dependencies(feed.Package(package)).Except(may));
    }

    [Fact]
    public void No_package_brings_a_compiler()
    {
        foreach (var package in feed.Packages)
            Assert.DoesNotContain(PackedFeed.Entries(package).Concat(PackedFeed.Dependencies(package)), name => name.Contains("CodeAnalysis", StringComparison.Ordinal));
    }
}
