using System.Diagnostics;
using System.Globalization;
using FixScore.Pairing;

namespace FixScore.Benchmarks.Swaps;

/// <summary>How long it takes to infer verdicts from trials.</summary>
static class InferenceTimes
{
    const int Devices = 50;

    public static void Show()
    {
        Infer(10, 5, 0);
        Console.WriteLine($"Inference, milliseconds a record, {Devices} records each: median and worst.");
        Console.WriteLine("parts  trials   median    worst  settled");
        foreach (var parts in (int[])[10, 20, 40])
            foreach (var trials in (int[])[5, 10, 20, 40])
                Row(parts, trials);
        Console.WriteLine();
    }

    static void Row(int parts, int trials)
    {
        var all = Enumerable.Range(0, Devices).Select(seed => Infer(parts, trials, seed)).ToArray();
        double[] times = [.. all.Select(each => each.Milliseconds).Order()];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{parts,5} {trials,7} {times[Devices / 2],8:0.000} {times[^1],8:0.000} {all.Average(each => each.Settled),8:0%}"));
    }

    static (double Milliseconds, double Settled) Infer(int parts, int trials, int seed)
    {
        var source = new RecordCase(GeneratedTrials.Of(parts, trials, seed));
        var start = Stopwatch.GetTimestamp();
        var verdicts = source.Derive<PairingVerdicts>().Contexts[0].Parts;
        return (Stopwatch.GetElapsedTime(start).TotalMilliseconds, verdicts.Count(part => part.Verdict is Pairing.Verdict.Paired or Pairing.Verdict.Cleared) / (double)parts);
    }
}
