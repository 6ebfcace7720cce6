using System.Collections.Immutable;

namespace FixScore.Testing;

/// <summary>Choices drawn one after another from a seed. The remainder favours low numbers by less than one in 2^57.</summary>
sealed class Dice(int seed)
{
    readonly SplitMix source = new(unchecked((uint)seed));

    /// <summary>A whole number from <paramref name="least"/> to <paramref name="most"/>, both included.</summary>
    public int Between(int least, int most) => least + (int)(source.Next() % (ulong)(most - least + 1));

    public bool Chance(int percent) => Between(1, 100) <= percent;

    public T Pick<T>(ImmutableArray<T> from) => from[Between(0, from.Length - 1)];

    /// <summary>Each with the same chance, in the order given.</summary>
    public ImmutableArray<T> Some<T>(IEnumerable<T> from, int percent) => [.. from.Where(_ => Chance(percent))];

    /// <summary>Fisher and Yates, from the end.</summary>
    public ImmutableArray<T> Shuffled<T>(ImmutableArray<T> from)
    {
        var order = from.ToBuilder();
        for (var i = order.Count - 1; i > 0; i--)
        {
            var j = Between(0, i);
            (order[i], order[j]) = (order[j], order[i]);
        }
        return order.ToImmutable();
    }
}
