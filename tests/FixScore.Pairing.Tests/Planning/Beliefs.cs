using System.Collections.Immutable;

namespace FixScore.Pairing.Tests.Planning;

/// <summary>Beliefs to plan for.</summary>
static class Beliefs
{
    public static string[] Ids(int count) => [.. Enumerable.Range(0, count).Select(index => $"p{index}")];

    public static TieBelief Independent(params decimal[] probabilities) =>
        TieBelief.Independent(probabilities.Select((probability, index) => ($"p{index}", probability)));

    public static TieBelief Independent(int count, decimal probability) => Independent([.. Enumerable.Repeat(probability, count)]);

    public static TieBelief OneOf(params decimal[] weights) => TieBelief.ExactlyOne(weights.Select((weight, index) => ($"p{index}", weight)));

    /// <summary>A small belief of any kind, with up to two flagged sets.</summary>
    public static TieBelief Random(int seed, int most)
    {
        var random = new Random(seed);
        var count = random.Next(2, most + 1);
        var belief = random.Next(4) switch
        {
            0 => TieBelief.Uniform(Ids(count), 0, random.Next(1, count + 1)),
            1 => OneOf([.. Enumerable.Range(0, count).Select(_ => (decimal)random.Next(1, 10))]),
            _ => Independent([.. Enumerable.Range(0, count).Select(_ => random.Next(1, 20) / 20m)]),
        };
        if (belief.AtMost == 1) return belief;
        return belief with { Flagged = [.. Enumerable.Range(0, random.Next(3)).Select(_ => Flag(random, count))] };
    }

    static ImmutableArray<string> Flag(Random random, int count)
    {
        var ids = Ids(count);
        random.Shuffle(ids);
        return [.. ids.Take(random.Next(1, count + 1)).Order(StringComparer.Ordinal)];
    }
}
