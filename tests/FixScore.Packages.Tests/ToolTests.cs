using System.Reflection.PortableExecutable;

namespace FixScore.Packages.Tests;

/// <summary>The tool as installed from its packages.</summary>
[Collection(PackedFeedCollection.Name)]
public sealed class ToolTests(PackedFeed feed)
{
    [Fact]
    public void The_package_that_is_installed_leads_to_that_of_the_platform_and_holds_no_program()
    {
        Assert.DoesNotContain(feed.Package("FixScore.Cli").Entries, entry => entry.EndsWith(".dll", StringComparison.Ordinal));
        Assert.Contains(feed.Package($"FixScore.Cli.{PackedFeed.Platform}").Entries, entry => entry.EndsWith("/FixScore.Cli.dll", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("FixScore.Cli.dll")]
    [InlineData("FixScore.dll")]
    [InlineData("FixScore.Criteria.Pairing.dll")]
    [InlineData("System.CommandLine.dll")]
    public void It_comes_compiled_for_the_platform(string assembly)
    {
        feed.Fixscore(Path.GetTempPath(), "--version");
        using var file = new PEReader(File.OpenRead(Path.Combine(feed.ToolFolder, assembly)));
        Assert.True(file.PEHeaders.CorHeader!.ManagedNativeHeaderDirectory.Size > 0);
    }
}
