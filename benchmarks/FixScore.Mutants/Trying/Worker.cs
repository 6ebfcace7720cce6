using Xunit.Abstractions;

namespace FixScore.Mutants.Trying;

/// <summary>Tries its part of the mutants, one after another, and writes what happened as lines.</summary>
sealed class Worker(WorkerTask asked)
{
    const double QuickMilliseconds = 30;

    readonly Journal journal = new(asked.Out, asked.Name);

    public void Run()
    {
        var tests = LoadedTests.From(asked.Tests);
        var mutants = MutantSwitch.In(Path.GetDirectoryName(asked.Tests)!);
        if (asked.Name == "reach")
        {
            Reach.Of(tests, mutants, TakesPart).Keep(asked.Out);
            return;
        }
        var reach = Reach.Kept(asked.Out)!;
        var cases = tests.All.Where(test => reach.Tests.TryGetValue(test.UniqueID, out var seen) && seen.Milliseconds <= asked.Slowest)
            .OrderBy(test => reach.Tests[test.UniqueID].Milliseconds).ToArray();
        var left = journal.Left();
        if (!reach.Once.Contains(left[0])) WarmUp(tests, mutants, [.. cases.Where(test => reach.Tests[test.UniqueID].Milliseconds < QuickMilliseconds)]);
        foreach (var mutant in left)
        {
            Try(mutant, tests, mutants, reach.Once.Contains(mutant)
                ? cases
                : [.. cases.Where(test => Array.BinarySearch(reach.Tests[test.UniqueID].Mutants, mutant) >= 0)],
                id => reach.Tests[id].Milliseconds);
            if (reach.Once.Contains(mutant)) return; // The next one needs a new process.
        }
    }

    bool TakesPart(ITestCase test) =>
        !asked.Without.Any(word => test.DisplayName.Contains(word, StringComparison.Ordinal)) && string.IsNullOrEmpty(test.SkipReason);

    // What is made once in a process is to be made without a mutant, or the first mutant would be kept for all that follow.
    static void WarmUp(LoadedTests tests, MutantSwitch mutants, ITestCase[] cases)
    {
        using var clock = new Timer(_ => End(), null, TimeSpan.FromMinutes(2), Timeout.InfiniteTimeSpan);
        mutants.Active = -1;
        tests.FirstFailed(cases);
    }

    void Try(int mutant, LoadedTests tests, MutantSwitch mutants, ITestCase[] cases, Func<string, double> time)
    {
        journal.Starts(mutant);
        if (cases.Length == 0)
        {
            journal.Says(mutant, Verdict.NotReached, "");
            return;
        }
        using var clock = new Timer(_ => TooLong(mutant));
        mutants.Active = mutant;
        string? failed = null;
        foreach (var batch in InGrowingBatches(cases))
        {
            clock.Change((long)(5_000 + 5 * batch.Sum(test => time(test.UniqueID))), Timeout.Infinite);
            if ((failed = tests.FirstFailed(batch)) is not null) break;
        }
        mutants.Active = -1;
        clock.Change(Timeout.Infinite, Timeout.Infinite);
        journal.Says(mutant, failed is null ? Verdict.Survived : Verdict.Noticed, failed ?? "");
    }

    void TooLong(int mutant)
    {
        journal.Says(mutant, Verdict.TooLong, "");
        End();
    }

    // A test that never ends cannot be ended from outside.
    static void End() => System.Diagnostics.Process.GetCurrentProcess().Kill();

    // Starting a run costs more than most tests, and most mutants are noticed by the first few tests.
    static IEnumerable<ITestCase[]> InGrowingBatches(ITestCase[] cases)
    {
        for (int start = 0, size = 4; start < cases.Length; start += size, size *= 2)
            yield return cases[start..Math.Min(start + size, cases.Length)];
    }
}
