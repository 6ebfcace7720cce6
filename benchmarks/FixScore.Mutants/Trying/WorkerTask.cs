using System.Globalization;

namespace FixScore.Mutants.Trying;

/// <summary>What one process has to do, as its arguments tell.</summary>
/// <param name="Name">Which part of the mutants; <c>reach</c> to find out first which test reaches which.</param>
/// <param name="Tests">The test assembly.</param>
/// <param name="Out">Folder for what was found.</param>
/// <param name="Slowest">Longest time of a test that takes part, in milliseconds.</param>
/// <param name="Without">Words in names of tests that are left out.</param>
sealed record WorkerTask(string Name, string Tests, string Out, double Slowest, string[] Without)
{
    const string First = "worker";

    public static WorkerTask? Of(string[] args) => args is [First, var name, var tests, var folder, var slowest, .. var without]
        ? new(name, tests, folder, double.Parse(slowest, CultureInfo.InvariantCulture), without)
        : null;

    public string[] Arguments => [First, Name, Tests, Out, Slowest.ToString(CultureInfo.InvariantCulture), .. Without];
}
