namespace FixScore.Packages.Tests;

/// <summary>The three uses of the README, built and run from the packages; and the tool, installed from them.</summary>
[Collection(PackedFeedCollection.Name)]
public sealed class ConsumerTests(PackedFeed feed)
{
    [Fact]
    public void A_record_is_scored_and_says_why()
    {
        var (output, folder) = feed.BuildAndRun("ScoreARecord");
        Assert.Matches(@"^[0-9.]+ to [0-9.]+ points\n", output);
        Assert.Contains("Fastener diversity: Screws of", output, StringComparison.Ordinal);
        Assert.DoesNotContain("CodeAnalysis", File.ReadAllText(Path.Combine(folder, "ScoreARecord.deps.json")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_custom_criterion_is_written_and_registered_in_under_30_lines_and_scores()
    {
        Assert.True(Repository.Text("tests/FixScore.Packages.Tests/Consumers/CustomCriterion/PartMarking.cs").TrimEnd().Split('\n').Length < 30);
        Assert.Contains("parts are marked.", feed.BuildAndRun("CustomCriterion").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_profiles_judge_several_records_side_by_side() => Assert.Matches(
        @"^Slate 2: [0-9.]+ to [0-9.]+ for owners, [0-9.]+ to [0-9.]+ for workshops\nSlate 3: .* for workshops\n$",
        feed.BuildAndRun("TwoProfiles", "larkfield-slate-2.json", "larkfield-slate-3.json").Output);

    [Fact]
    public void The_tool_runs_the_demo_in_an_empty_folder()
    {
        var folder = Directory.CreateTempSubdirectory("fixscore-demo-").FullName;
        try
        {
            feed.Fixscore(folder, "demo");
            Assert.True(File.Exists(Path.Combine(folder, "fixscore-demo", "report.html")));
            Assert.Equal(["fixscore-demo"], Directory.GetFileSystemEntries(folder).Select(Path.GetFileName));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
