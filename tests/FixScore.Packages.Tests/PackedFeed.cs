using System.Runtime.InteropServices;
using FixScore.Packages.Tests.Authors;

namespace FixScore.Packages.Tests;

/// <summary>All packages, packed once into a folder that serves as a feed, and the tool installed from it. The slow part of these tests.</summary>
public sealed class PackedFeed : IDisposable
{
    readonly string root = Directory.CreateTempSubdirectory("fixscore-feed-").FullName;
    readonly Lazy<string> tool;
    readonly Lazy<AuthorGuide> guide;

    public PackedFeed()
    {
        Repository.Run(Repository.Copy, "dotnet", "pack", "FixScore.sln", "-o", Feed, $"-p:ToolPackageRuntimeIdentifiers={Platform}", "--nologo", "-v", "quiet");
        Packages = [.. Directory.GetFiles(Feed, "*.nupkg").Order(StringComparer.Ordinal).Select(path => new Package(path))];
        // This feed and no other: no other registry can slip in.
        File.WriteAllText(Path.Combine(root, "nuget.config"), $"""
            <configuration><packageSources><clear /><add key="local" value="{Feed}" /></packageSources></configuration>
            """);
        tool = new(InstallTool);
        guide = new(() => new(new(Directory.CreateDirectory(Path.Combine(root, "author")), Feed, Cache)));
    }

    /// <summary>The guide for authors, followed once.</summary>
    internal AuthorGuide Guide => guide.Value;

    /// <summary>The platform of this machine, which the tool is compiled for.</summary>
    public static string Platform => RuntimeInformation.RuntimeIdentifier;

    /// <summary>Where the tool stands once it is installed.</summary>
    public string ToolFolder => Path.GetDirectoryName(File.ResolveLinkTarget(tool.Value, returnFinalTarget: true)?.FullName ?? tool.Value)!;

    string Feed => Path.Combine(root, "feed");

    /// <summary>Packages as unpacked by consumers: no older build can slip in.</summary>
    (string, string) Cache => ("NUGET_PACKAGES", Path.Combine(root, "cache"));

    /// <summary>All packages by id.</summary>
    internal Package[] Packages { get; }

    internal Package Package(string id) => Packages.Single(package => package.Id == id);

    /// <summary>A new folder with the demo records.</summary>
    public string FolderWithRecords()
    {
        var folder = Path.Combine(root, Guid.NewGuid().ToString("N"));
        Repository.CopyFolder(Path.Combine(Repository.Root, "src/FixScore.Cli/Demo"), Directory.CreateDirectory(folder).FullName);
        return folder;
    }

    /// <summary>Runs the installed tool.</summary>
    public string Fixscore(string folder, params string[] arguments) => Repository.Run(folder, tool.Value, arguments);

    /// <summary>Builds a consumer from the feed in a folder of its own and runs it; also gives the folder it was built to.</summary>
    public (string Output, string Folder) BuildAndRun(string consumer, params string[] arguments)
    {
        var folder = FolderWithRecords();
        Repository.CopyFolder(Path.Combine(Repository.Root, "tests/FixScore.Packages.Tests/Consumers", consumer), folder);
        Repository.Run(folder, [Cache], "dotnet", "build", "-o", "out", "--nologo", "-v", "quiet");
        var built = Path.Combine(folder, "out");
        return (Repository.Run(built, "dotnet", [$"{consumer}.dll", .. arguments]), built);
    }

    public void Dispose() => Directory.Delete(root, recursive: true);

    string InstallTool()
    {
        Repository.Run(root, [Cache], "dotnet", "tool", "install", "FixScore.Cli", "--tool-path", "tools", "--no-cache");
        return Path.Combine(root, "tools", "fixscore");
    }
}

/// <summary>Tests that share the feed, one after another.</summary>
[CollectionDefinition(Name)]
public sealed class PackedFeedCollection : ICollectionFixture<PackedFeed>
{
    public const string Name = "packed feed";
}
