using System.IO.Compression;
using System.Reflection.Metadata;
using System.Text;

namespace FixScore.Packages.Tests;

/// <summary>What is in the packages.</summary>
[Collection(PackedFeedCollection.Name)]
public sealed class PackageTests(PackedFeed feed)
{
    /// <summary>What a package may ask for. What is not here has to be a plugin or the tool.</summary>
    static readonly Dictionary<string, string[]> May = new(StringComparer.Ordinal)
    {
        ["FixScore.Abstractions"] = [],
        ["FixScore.Disassembly"] = ["FixScore.Abstractions"],
        ["FixScore.Pairing"] = ["FixScore.Abstractions", "FixScore.Disassembly"],
        ["FixScore"] = ["FixScore.Abstractions"],
        ["FixScore.Testing"] = ["FixScore"],
        ["FixScore.Analysis"] = ["FixScore", "MathNet.Numerics"],
        ["FixScore.Reporting"] = ["FixScore", "FixScore.Analysis", "FixScore.Disassembly", "FixScore.Pairing", "OxyPlot.Core", "Parquet.Net", "Sep", "Spectre.Console"],
        ["FixScore.Reporting.Images"] = ["FixScore.Reporting", "SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies"],
        ["FixScore.Extensions"] = ["FixScore", "Microsoft.Extensions.Configuration.Json", "Microsoft.Extensions.DependencyInjection"],
        ["FixScore.Profiles"] = [],
        ["FixScore.Templates"] = [],
    };

    static readonly string[] PluginMay = ["FixScore.Abstractions", "FixScore.Disassembly", "FixScore.Pairing"];

    IEnumerable<Package> Libraries => feed.Packages.Where(package => !package.IsTool && package.Id is not ("FixScore.Profiles" or "FixScore.Templates"));

    [Fact]
    public void Every_package_has_a_readme_a_licence_an_icon_and_a_description() => Assert.All(feed.Packages, package =>
    {
        Assert.Contains("README.md", package.Entries);
        Assert.Contains("icon.png", package.Entries);
        Assert.Equal("MIT", package.Text("license"));
        Assert.Equal("expression", package.Element("license")!.Attribute("type")!.Value);
        Assert.NotEqual("Package Description", package.Text("description"));
    });

    [Fact]
    public void Every_library_has_documentation_and_symbols() => Assert.All(Libraries, package =>
    {
        Assert.Contains($"lib/net10.0/{package.Id}.dll", package.Entries);
        Assert.Contains($"lib/net10.0/{package.Id}.xml", package.Entries);
        using var symbols = ZipFile.OpenRead(package.SymbolsPath);
        Assert.Contains(symbols.Entries, entry => entry.FullName == $"lib/net10.0/{package.Id}.pdb");
    });

    [Fact]
    public void Dependencies_point_only_downward() => Assert.All(feed.Packages, package =>
        Assert.Empty(package.Dependencies.Except(IsPlugin(package.Id) ? PluginMay : package.IsTool ? [] : May[package.Id])));

    [Fact]
    public void There_is_a_package_for_every_plugin() => Assert.Equal(
        Directory.GetDirectories(Path.Combine(Repository.Root, "plugins")).Select(Path.GetFileName).Where(name => IsPlugin(name!)).Order(StringComparer.Ordinal),
        feed.Packages.Select(package => package.Id).Where(IsPlugin).Order(StringComparer.Ordinal));

    [Fact]
    public void No_package_brings_a_compiler() => Assert.All(feed.Packages, package =>
        Assert.DoesNotContain(package.Entries.Concat(package.Dependencies), name => name.Contains("CodeAnalysis", StringComparison.Ordinal)));

    [Fact]
    public void The_published_tool_depends_on_no_compiler_and_on_all_plugins()
    {
        var tool = feed.Package($"FixScore.Cli.{PackedFeed.Platform}");
        var closure = Encoding.UTF8.GetString(tool.Read(tool.Entries.Single(entry => entry.EndsWith("FixScore.Cli.deps.json", StringComparison.Ordinal))));
        Assert.DoesNotContain("Microsoft.CodeAnalysis", closure, StringComparison.Ordinal);
        Assert.All(feed.Packages.Where(package => IsPlugin(package.Id)), plugin => Assert.Contains($"\"{plugin.Id}/", closure, StringComparison.Ordinal));
    }

    [Fact]
    public void The_profiles_are_content_only_and_complete()
    {
        var profiles = feed.Package("FixScore.Profiles");
        Assert.DoesNotContain(profiles.Entries, entry => entry.EndsWith(".dll", StringComparison.Ordinal));
        Assert.Equal(
            Directory.GetFiles(Path.Combine(Repository.Root, "scoring-profiles"), "*.json").Select(path => $"scoring-profiles/{Path.GetFileName(path)}").Order(StringComparer.Ordinal),
            profiles.Entries.Where(entry => entry.EndsWith(".json", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        Assert.Contains("buildTransitive/FixScore.Profiles.targets", profiles.Entries);
    }

    [Fact]
    public void The_kernel_ships_the_schemas_with_an_example_each() => Assert.All((string[])["record", "profile", "score"], name =>
    {
        Assert.Contains($"schemas/{name}.schema.json", feed.Package("FixScore").Entries);
        Assert.Contains($"schemas/examples/{name}.example.json", feed.Package("FixScore").Entries);
    });

    [Fact]
    public void A_repository_is_named_only_with_its_address() => Assert.All(feed.Packages, package =>
        Assert.True(package.Element("repository") is not { } repository || repository.Attribute("url") is { Value.Length: > 0 }));

    // As continuous integration builds: the same bytes whatever folder it builds in.
    [Fact]
    public void Symbols_know_no_folder_of_the_machine() => Assert.All(Libraries, package =>
    {
        using var zip = ZipFile.OpenRead(package.SymbolsPath);
        using var stream = zip.GetEntry($"lib/net10.0/{package.Id}.pdb")!.Open();
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        bytes.Position = 0;
        using var provider = MetadataReaderProvider.FromPortablePdbStream(bytes);
        var symbols = provider.GetMetadataReader();
        Assert.All(symbols.Documents, document => Assert.StartsWith("/_", symbols.GetString(symbols.GetDocument(document).Name), StringComparison.Ordinal));
    });

    static bool IsPlugin(string id) => id.StartsWith("FixScore.Criteria.", StringComparison.Ordinal) || id.StartsWith("FixScore.Requirements.", StringComparison.Ordinal);
}
