using FixScore.Disassembly.Tests.Oracle;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Generated;

/// <summary>That the random records are worth the trouble: they show every case and ask for a search.</summary>
public sealed class RandomRecordsTests
{
    [Fact]
    public void They_show_every_case_often()
    {
        var seen = new SortedDictionary<string, int>(StringComparer.Ordinal);
        for (var seed = 0; seed < 2_000; seed++) Look(RandomRecords.Of(seed), seen);
        Assert.Fail(string.Join("\n", seen.Select(pair => $"{pair.Key} {pair.Value}")));
    }

    static void Look(TeardownRecord record, SortedDictionary<string, int> seen)
    {
        var truth = new Truth(record);
        foreach (var part in record.Parts)
        {
            foreach (var cost in Enum.GetValues<RouteCost>())
            {
                var route = truth.To([part.Id], cost, FirstTool.NoChange);
                Count($"{cost} {route.Reachability} {(route.Best is null ? "none" : "way")}");
                if (route.Best is { } best) Count($"length {best.Sequence.Length}");
                if (route.Best?.Cost != route.Least?.Cost) Count($"range");
            }
        }

        void Count(string what) => seen[what] = seen.GetValueOrDefault(what) + 1;
    }
}
