using System.Diagnostics;
using System.Text.Json;
using Xunit.Abstractions;

namespace FixScore.Mutants.Trying;

/// <summary>Which mutants each test reaches, and how long it takes.</summary>
/// <param name="Tests">By the name of the test.</param>
/// <param name="Once">Mutants reached while something static was made: that happens once in a process.</param>
sealed record Reach(SortedDictionary<string, TestReach> Tests, SortedSet<int> Once)
{
    // A test that takes this long the first time is no quicker when compiled.
    static readonly TimeSpan Long = TimeSpan.FromSeconds(5);

    static string FileIn(string folder) => Path.Combine(folder, "reach.json");

    public static Reach? Kept(string folder) =>
        File.Exists(FileIn(folder)) ? JsonSerializer.Deserialize<Reach>(File.ReadAllText(FileIn(folder))) : null;

    public void Keep(string folder) => File.WriteAllText(FileIn(folder), JsonSerializer.Serialize(this));

    /// <summary>Runs every test twice: the first time to see what it reaches, the second, when it is compiled, for its time.</summary>
    public static Reach Of(LoadedTests tests, MutantSwitch mutants, Func<ITestCase, bool> takesPart)
    {
        var reach = new Reach(new(StringComparer.Ordinal), []);
        mutants.Active = -1;
        mutants.Captures = true;
        foreach (var test in tests.All.Where(takesPart))
        {
            mutants.Reached();
            var watch = Stopwatch.StartNew();
            if (tests.FirstFailed([test]) is { } failed)
            {
                Console.Error.WriteLine($"left out, fails without a mutant: {failed}");
                continue;
            }
            var (all, once) = mutants.Reached();
            reach.Once.UnionWith(once);
            if (watch.Elapsed < Long)
            {
                watch.Restart();
                tests.FirstFailed([test]);
            }
            reach.Tests[test.UniqueID] = new(test.DisplayName, watch.Elapsed.TotalMilliseconds, [.. all.Concat(mutants.Reached().All).Distinct().Order()]);
        }
        mutants.Captures = false;
        return reach;
    }
}

/// <summary>What one test reaches.</summary>
/// <param name="Name">As people read it.</param>
/// <param name="Milliseconds">How long it takes when compiled.</param>
/// <param name="Mutants">Those that it reaches.</param>
sealed record TestReach(string Name, double Milliseconds, int[] Mutants);
