using System.Diagnostics;
using FixScore.Mutants.Trying;

namespace FixScore.Mutants;

/// <summary>Tries mutants with the tests of one assembly: starts workers, and starts them again when a mutant has ended one.</summary>
sealed class Supervisor(MutantArguments asked, string tests, string folder)
{
    const int Workers = 2;
    const string MostMemory = "0x80000000"; // 2 GiB: a mutant that never stops allocating fails its test.

    /// <summary>What became of each.</summary>
    public IReadOnlyDictionary<int, Verdict> Run(int[] mutants)
    {
        Directory.CreateDirectory(folder);
        if (Reach.Kept(folder) is null) Start("reach");
        var once = Reach.Kept(folder)!.Once;
        Journal[] journals = [.. Enumerable.Range(0, Workers).Select(part => new Journal(folder, $"{part}"))];
        // Those that need a process of their own come last, so that they do not end one that is warm.
        for (var part = 0; part < Workers; part++) journals[part].Asks(mutants.Where((_, index) => index % Workers == part).OrderBy(once.Contains));
        Parallel.ForEach(journals, journal =>
        {
            while (journal.Left().Count > 0)
            {
                Start(journal.Name);
                journal.WorkerEnded();
            }
        });
        return journals.SelectMany(journal => journal.Said()).ToDictionary(pair => pair.Key, pair => pair.Value.Verdict);
    }

    void Start(string name)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!, [typeof(Supervisor).Assembly.Location, .. new WorkerTask(name, tests, folder, asked.Slowest, asked.Without).Arguments])
        {
            RedirectStandardOutput = true,
        };
        start.Environment["DOTNET_GCHeapHardLimit"] = MostMemory;
        using var process = Process.Start(start)!;
        process.OutputDataReceived += (_, _) => { }; // What tests print is nobody's business here.
        process.BeginOutputReadLine();
        process.WaitForExit();
    }
}
