namespace FixScore.Packages.Tests;

/// <summary>The sample that is compiled to native code scores as the tool does.</summary>
[Collection(PackedFeedCollection.Name)]
public sealed class NativeTests(PackedFeed feed)
{
    // Warnings about what trimming or native code may lose are errors: they would fail the publishing.
    [NativeFact]
    public void A_native_program_writes_the_very_bytes_that_the_tool_writes()
    {
        var folder = feed.FolderWithRecords();
        Repository.Run(Repository.Copy, "dotnet", "publish", "samples/NativeScore", "-r", PackedFeed.Platform, "-o", Path.Combine(folder, "native"), "--nologo", "-v", "quiet");
        Assert.Equal(["NativeScore"], Directory.GetFiles(Path.Combine(folder, "native")).Select(Path.GetFileName).Where(name => !name!.EndsWith(".dbg", StringComparison.Ordinal)));
        Assert.All(Directory.GetFiles(folder, "*.json"), record =>
        {
            var said = Repository.Run(folder, Path.Combine(folder, "native", "NativeScore"), record, Path.Combine(Repository.Root, "scoring-profiles/bench-balanced.json"), "native.score");
            feed.Fixscore(folder, "score", record, "--profile", "bench-balanced", "--out", "tool.score");
            Assert.Matches(@"^[a-z0-9-]+: [0-9.]+ to [0-9.]+ points\nFastener diversity: Screws of", said);
            Assert.Equal(File.ReadAllBytes(Path.Combine(folder, "tool.score")), File.ReadAllBytes(Path.Combine(folder, "native.score")));
        });
    }
}
