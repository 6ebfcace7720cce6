using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace FixScore.Benchmarks.Lines;

/// <summary>Records as lines: read, scored and written, over reading them only. Peak memory of the process.</summary>
/// <remarks><c>lines [records]</c>. Synthetic records of a small device, about 3 KB each, that differ in counts and observations.</remarks>
static class LineBenchmark
{
    public static void Run(string[] args)
    {
        var records = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 100_000;
        var profile = Demo.Profile("bench-balanced");
        Time(new SyntheticRecords(1_000), input => Scored(input, profile)); // everything jitted
        Console.WriteLine($"{records} records of {SyntheticRecords.Line(0).Length} bytes and more, {Environment.ProcessorCount} cores");
        var read = Time(new SyntheticRecords(records), Read);
        var whole = Time(new SyntheticRecords(records), input => Scored(input, profile));
        var made = Time(new SyntheticRecords(records), Drained);
        Console.WriteLine(FormattableString.Invariant($"made only        {made:0.0} s"));
        Console.WriteLine(FormattableString.Invariant($"read, checked    {read:0.0} s, {records / read:0} a second"));
        Console.WriteLine(FormattableString.Invariant($"and scored, written {whole:0.0} s, {records / whole:0} a second, ratio to reading {whole / read:0.00}"));
        Console.WriteLine(FormattableString.Invariant($"peak memory {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MB"));
    }

    static double Time(Stream input, Action<Stream> run)
    {
        var watch = Stopwatch.StartNew();
        run(input);
        return watch.Elapsed.TotalSeconds;
    }

    static void Scored(Stream input, Profile profile)
    {
        var bytes = 0L;
        foreach (var line in RecordLines.Score(input, profile, line => line.Score is null ? throw new InvalidOperationException("A record cannot be scored.") : line.ToJson().Length, Demo.Catalogue)) bytes += line;
        if (bytes == 0) throw new InvalidOperationException("Nothing was scored.");
    }

    // The same batches on the same cores, read and checked only.
    static void Read(Stream input)
    {
        using var reader = new StreamReader(input, Encoding.UTF8);
        var batch = new List<string>();
        while (!reader.EndOfStream)
        {
            batch.Clear();
            while (batch.Count < 256 && reader.ReadLine() is { } line) batch.Add(line);
            Parallel.ForEach(batch, line => RecordFile.Read(Encoding.UTF8.GetBytes(line), Demo.Catalogue).OrThrow());
        }
    }

    static void Drained(Stream input) => input.CopyTo(Stream.Null);
}
