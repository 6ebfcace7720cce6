using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Benchmarks.Swaps;

/// <summary>Devices with swap trials whose outcomes follow from tied parts drawn beforehand: never contradictory.</summary>
static class GeneratedTrials
{
    const double ShareTied = 0.15;

    public static TeardownRecord Of(int parts, int trials, int seed)
    {
        var random = new Random(seed);
        string[] ids = [.. Enumerable.Range(0, parts).Select(index => $"part-{index}")];
        var tied = ids.Where(_ => random.NextDouble() < ShareTied).ToHashSet(StringComparer.Ordinal);
        return new()
        {
            Id = "generated-trials",
            Device = new() { Maker = "Invented Maker", Model = "Trial", Kind = "smartphone" },
            Assessment = new() { Assessor = "generator", Date = new(2026, 1, 15), Units = [new() { Id = "unit-a" }, new() { Id = "unit-b" }] },
            Parts = [new() { Id = "board", Role = Roles.Mainboard }, .. ids.Select(id => new Part { Id = id, Role = id })],
            Swaps = EntryList.Of(Enumerable.Range(0, trials).Select(number => Trial(random, number, ids, tied)).ToImmutableArray()),
        };
    }

    static SwapTrial Trial(Random random, int number, string[] ids, HashSet<string> tied)
    {
        string[] foreign = [.. ids.Where(_ => random.Next(6) == 0)];
        return new()
        {
            Id = $"trial-{number}", Host = "unit-a", Installed = [.. foreign.Select(id => new InstalledPart(id, "unit-b"))],
            Checks = [new() { Function = "all", Result = foreign.Any(tied.Contains) ? SwapResult.Warning : SwapResult.Works }],
        };
    }
}
