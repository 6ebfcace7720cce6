using FixScore.Fuzz.Findings;

namespace FixScore.Fuzz;

/// <summary>Inputs worth changing: the seeds, and each input that led to something no input led to before.</summary>
sealed class Corpus(byte[][] seeds)
{
    const int Most = 4000;
    const int Longest = 24 << 10;

    readonly List<byte[]> inputs = [.. seeds];
    readonly HashSet<string> seen = new(StringComparer.Ordinal);

    public int Count => inputs.Count;

    public int Traces => seen.Count;

    // Of two the shorter: more inputs a second.
    public byte[] Pick(Chance chance)
    {
        var (one, two) = (chance.Of(inputs), chance.Of(inputs));
        return one.Length <= two.Length || chance.OneIn(8) ? one : two;
    }

    public void Learn(byte[] input, Traces traces)
    {
        var isNew = false;
        foreach (var trace in traces.Found) isNew |= seen.Count < 200_000 && seen.Add(trace);
        if (input.Length <= Longest && (isNew || inputs.Count < Most / 2 && input.Length <= Longest / 4 && seen.Add(traces.Together)) && inputs.Count < Most) inputs.Add(input);
    }
}
