using System.Numerics;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>What one thread has counted. Whole numbers only, so that the order in which draws come and tallies merge cannot show. Not thread safe.</summary>
sealed class PlaceTally(int units, int criteria, bool withWins, PlaceCounts counts)
{
    /// <summary>What one shared place counts as: divided evenly by groups of up to 20, and by larger ones to within one part.</summary>
    public const long Whole = 232_792_560;

    /// <summary>Places in draws without level units; of this thread, or of all.</summary>
    public readonly PlaceCounts Places = counts;

    /// <summary>Parts of <see cref="Whole"/> of places in draws with level units; <c>null</c> while there was none.</summary>
    public long[]? Shared;

    /// <summary>Draws in which a unit was first, alone or with others.</summary>
    public readonly int[] Firsts = new int[units];

    /// <summary>Sums of the weights in these draws, as whole numbers.</summary>
    public readonly long[] Weights = new long[units * criteria];

    /// <summary>Draws in which a unit was above another; <c>null</c> when not asked for.</summary>
    public readonly int[]? Wins = withWins ? new int[units * units] : null;

    /// <summary>A unit was first under these weights, one every <paramref name="stride"/>.</summary>
    public void First(int unit, ReadOnlySpan<double> weights, int stride, double scale)
    {
        unchecked
        {
            Firsts[unit]++;
            var own = Weights.AsSpan(unit * criteria, criteria);
            for (var i = 0; i < own.Length; i++) own[i] += (long)(weights[i * stride] * scale);
        }
    }

    /// <summary>Level units share their places: each has an equal part of each, to within one of <see cref="Whole"/>. One alone has all of its own.</summary>
    public void Share(ReadOnlySpan<int> level, int place)
    {
        Shared ??= new long[units * units];
        var (part, rest) = Math.DivRem(Whole, level.Length);
        for (var i = 0; i < level.Length; i++)
            for (var j = 0; j < level.Length; j++)
                Shared[(level[i] * units) + place + j] += part + ((i + j) % level.Length < rest ? 1 : 0);
    }

    public void Add(PlaceTally other)
    {
        if (Places != other.Places) Sum<int>(Places.Cells, other.Places.Cells);
        Sum<int>(Firsts, other.Firsts);
        Sum<long>(Weights, other.Weights);
        if (Wins is not null) Sum<int>(Wins, other.Wins);
        if (other.Shared is not null) Sum<long>(Shared ??= new long[units * units], other.Shared);
    }

    static void Sum<T>(Span<T> into, ReadOnlySpan<T> from) where T : struct, INumberBase<T>
    {
        var (i, width) = (0, Vector<T>.Count);
        for (; i + width <= into.Length; i += width) (new Vector<T>(into[i..]) + new Vector<T>(from[i..])).CopyTo(into[i..]);
        for (; i < into.Length; i++) into[i] += from[i];
    }
}
