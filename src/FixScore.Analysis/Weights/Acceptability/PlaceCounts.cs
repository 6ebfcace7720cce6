namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>Draws by unit and place. Threads may add at the same time: each range of units has a lock.</summary>
sealed class PlaceCounts(int units)
{
    // A table for each thread would be quicker only while it stays in the cache.
    const int MostOwn = 128;
    const int InRange = 64;

    readonly Lock[] _locks = [.. Enumerable.Range(0, (units + InRange - 1) / InRange).Select(_ => new Lock())];

    /// <summary>Row by row, a unit each.</summary>
    public int[] Cells { get; } = new int[units * units];

    /// <summary>Gives each thread its table, or all the same when tables are large.</summary>
    public static Func<PlaceCounts> For(int units)
    {
        if (units <= MostOwn) return () => new(units);
        var shared = new PlaceCounts(units);
        return () => shared;
    }

    /// <summary>Adds the places of some draws. Unit by unit, so that a unit's row stays near.</summary>
    /// <param name="places">From 0, a row of draws for each unit.</param>
    /// <param name="stride">Length of a row.</param>
    /// <param name="draws">Which of them count.</param>
    public void Add(int[] places, int stride, ReadOnlySpan<int> draws)
    {
        for (var range = 0; range < _locks.Length; range++)
            lock (_locks[range])
                for (var unit = range * InRange; unit < Math.Min(units, (range + 1) * InRange); unit++)
                    Add(Cells.AsSpan(unit * units, units), places.AsSpan(unit * stride, stride), draws);
    }

    /// <summary>The same draw by draw, for few units: one that often has the same place is not counted twice in a row, which would wait for memory.</summary>
    /// <inheritdoc cref="Add(int[], int, ReadOnlySpan{int})"/>
    public void AddFew(int[] places, int stride, ReadOnlySpan<int> draws)
    {
        unchecked
        {
            var cells = Cells;
            foreach (var draw in draws)
                for (int row = 0, at = draw; at < places.Length; row += units, at += stride) cells[row + places[at]]++;
        }
    }

    static void Add(Span<int> row, ReadOnlySpan<int> places, ReadOnlySpan<int> draws)
    {
        unchecked
        {
            foreach (var draw in draws) row[places[draw]]++;
        }
    }
}
