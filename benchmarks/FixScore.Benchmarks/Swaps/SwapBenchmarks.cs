using System.Globalization;

namespace FixScore.Benchmarks.Swaps;

/// <summary>Swap trials: how long inference and planning take, and what plans save over trying one part at a time.</summary>
/// <remarks><c>swaps [devices]</c>, or <c>swaps [devices] gains</c> for the savings alone. Devices, ties and priors are generated from seeds and invented.</remarks>
static class SwapBenchmarks
{
    public static void Run(string[] args)
    {
        var devices = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 1000;
        if (args is not [_, "gains"])
        {
            InferenceTimes.Show();
            PlanningTimes.Show();
        }
        PlanGains.Show(devices);
    }
}
