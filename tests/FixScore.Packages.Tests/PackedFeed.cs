using System.IO.Compression;
using System.Xml.Linq;

namespace FixScore.Packages.Tests;

/// <summary>All packages, packed once into a folder that serves as a feed.</summary>
public sealed class PackedFeed : IDisposable
{
    readonly string root = Directory.CreateTempSubdirectory("fixscore-feed-").FullName;

    public PackedFeed() => Repository.Run(Repository.Copy, "dotnet", "pack", "FixScore.sln", "-c", "Release", "-o", Feed, "--nologo", "-v", "quiet");

    public string Feed => Path.Combine(root, "feed");

    public IEnumerable<string> Packages => Directory.GetFiles(Feed, "*.nupkg").Order(StringComparer.Ordinal);

    public string Package(string id) => Packages.Single(path => NameOf(path) == id);

    public static string NameOf(string package) => Nuspec(package).Descendants().First(each => each.Name.LocalName == "id").Value;

    public static string[] Entries(string package)
    {
        using var zip = ZipFile.OpenRead(package);
        return [.. zip.Entries.Select(entry => entry.FullName)];
    }

    public static XElement Nuspec(string package)
    {
        using var zip = ZipFile.OpenRead(package);
        using var stream = zip.Entries.Single(entry => entry.FullName.EndsWith(".nuspec", StringComparison.Ordinal)).Open();
        return XElement.Load(stream);
    }

    public static IEnumerable<string> Dependencies(string package) =>
        Nuspec(package).Descendants().Where(each => each.Name.LocalName == "dependency").Select(each => each.Attribute("id")!.Value);

    public static string VersionOf(string package) => Nuspec(package).Descendants().First(each => each.Name.LocalName == "version").Value;

    /// <summary>Builds a consumer from the feed in a folder of its own, with a package cache of its own so that nothing older is taken; runs it.</summary>
    public string BuildAndRun(string consumer, string[] packages, params string[] arguments)
    {
        var folder = Directory.CreateDirectory(Path.Combine(root, consumer)).FullName;
        foreach (var file in Directory.GetFiles(Path.Combine(Repository.Root, "tests/FixScore.Packages.Tests/Consumers", consumer)))
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        foreach (var file in Directory.GetFiles(Path.Combine(Repository.Root, "src/FixScore.Cli/Demo"))) File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        File.WriteAllText(Path.Combine(folder, "nuget.config"), $"""
            <configuration>
              <packageSources><add key="local" value="{Feed}" /></packageSources>
              <config><add key="globalPackagesFolder" value="{Path.Combine(root, "cache")}" /></config>
            </configuration>
            """);
        var references = packages.Select(id => $"""<PackageReference Include="{id}" Version="{VersionOf(Package(id))}" />""");
        File.WriteAllText(Path.Combine(folder, $"{consumer}.csproj"), $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <OutputType>Exe</OutputType><TargetFramework>net10.0</TargetFramework><Nullable>enable</Nullable><ImplicitUsings>enable</ImplicitUsings>
                <TreatWarningsAsErrors>true</TreatWarningsAsErrors>
              </PropertyGroup>
              <ItemGroup>{string.Concat(references)}</ItemGroup>
              <ItemGroup><None Include="*.json" CopyToOutputDirectory="PreserveNewest" /></ItemGroup>
            </Project>
            """);
        Repository.Run(folder, "dotnet", "build", "-c", "Release", "-o", "out", "--nologo", "-v", "quiet");
        return Repository.Run(Path.Combine(folder, "out"), "dotnet", [$"{consumer}.dll", .. arguments]);
    }

    public void Dispose() => Directory.Delete(root, recursive: true);
}
