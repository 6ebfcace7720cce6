using System.Globalization;

namespace FixScore.Fuzz.Findings;

/// <summary>Keeps the first input of each way to fail as a file, made small, with its reason beside it.</summary>
sealed class Keeper(string folder, string target)
{
    readonly SortedDictionary<string, long> times = new(StringComparer.Ordinal);

    public IReadOnlyDictionary<string, long> Times => times;

    public void Keep(byte[] input, Failure failure, Func<byte[], Failure?> again)
    {
        times[failure.Key] = times.GetValueOrDefault(failure.Key) + 1;
        if (times[failure.Key] > 1) return;
        var name = Path.Combine(Directory.CreateDirectory(folder).FullName, string.Create(CultureInfo.InvariantCulture, $"{target}-{times.Count}-{Environment.ProcessId}"));
        File.WriteAllText(name + ".txt", failure.Reason + "\n");
        File.WriteAllBytes(name + ".whole.json", input);
        Console.WriteLine($"FAILED {name}: {failure.Reason}");
        if (failure.Key != Failure.TooSlow) File.WriteAllBytes(name + ".json", Smaller.Of(input, text => again(text)?.Key == failure.Key));
    }
}
