using System.Diagnostics;
using System.Globalization;

namespace FixScore.Benchmarks.Acceptability;

/// <summary>What benchmarks/acceptability.py printed.</summary>
/// <param name="Version">Of numpy.</param>
/// <param name="Seconds">By the clock, median.</param>
/// <param name="Busy">Of processors, median.</param>
/// <param name="FirstPlaces">Share of the first place for each unit.</param>
sealed record Numpy(string Version, double Seconds, double Busy, double[] FirstPlaces)
{
    /// <summary>Runs the script; <c>null</c> when there is no such python or it has no numpy.</summary>
    public static Numpy? Run(string python, params int[] numbers)
    {
        string[] arguments = ["benchmarks/acceptability.py", .. numbers.Select(number => number.ToString(CultureInfo.InvariantCulture))];
        try
        {
            using var process = Process.Start(new ProcessStartInfo(python, arguments) { RedirectStandardOutput = true })!;
            var lines = process.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
            process.WaitForExit();
            return process.ExitCode == 0 ? new(lines[0], Column(lines, 0), Column(lines, 1), [.. lines[^1].Split(' ').Select(Parse)]) : null;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }

    // The first run warms up.
    static double Column(string[] lines, int column) => Median(lines[2..^1].Select(line => Parse(line.Split(' ')[column])));

    public static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }

    static double Parse(string number) => double.Parse(number, CultureInfo.InvariantCulture);
}
