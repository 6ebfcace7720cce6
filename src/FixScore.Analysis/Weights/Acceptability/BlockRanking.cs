using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>Ranks the units of a block of draws and tallies their places. Not thread safe.</summary>
/// <remarks>Few units are compared all with all, many are sorted, level ones are sorted draw by draw. All find the same places.</remarks>
sealed class BlockRanking(int units, PlaceTally tally, double scale)
{
    const int MostCompared = 80;

    /// <summary>Draws ranked before they are tallied.</summary>
    public const int Most = 8 * Lanes.Count;

    readonly IBlockOrder _order = units <= MostCompared ? new ComparedOrder(units) : new ExchangedOrder(units);
    readonly PlaceSort _sort = new(units);
    readonly int[] _places = new int[units * Most];
    readonly int[] _told = new int[Most];
    readonly int[] _firsts = new int[Lanes.Count];
    int _count;

    /// <summary>Ranks some draws of a block: <see cref="Most"/> at most until the next <see cref="Tally"/>.</summary>
    /// <param name="block">Number of the block since then.</param>
    /// <param name="weights">A row of lanes for each criterion.</param>
    /// <param name="scores">A row of lanes for each unit.</param>
    /// <param name="draws">How many lanes count.</param>
    public void Rank(int block, ReadOnlySpan<double> weights, ReadOnlySpan<double> scores, int draws)
    {
        if (tally.Wins is { } wins) CountWins(wins, scores, draws);
        var start = block * Lanes.Count;
        var level = _order.Rank(scores, _places.AsSpan(start), Most, _firsts);
        for (var lane = 0; lane < draws; lane++)
            if ((level >> lane & 1) != 0) CountLevel(weights, scores, lane);
            else
            {
                _told[_count++] = start + lane;
                tally.First(_firsts[lane], weights[lane..], Lanes.Count, scale);
            }
    }

    /// <summary>Tallies what was ranked.</summary>
    public void Tally()
    {
        var told = _told.AsSpan(0, _count);
        if (units <= MostCompared) tally.Places.AddFew(_places, Most, told);
        else tally.Places.Add(_places, Most, told);
        _count = 0;
    }

    void CountLevel(ReadOnlySpan<double> weights, ReadOnlySpan<double> scores, int lane)
    {
        _sort.Sort(scores, lane);
        for (int place = 0, end; place < units; place = end)
        {
            end = _sort.EndOfLevel(place);
            var level = _sort.Order[place..end];
            tally.Share(level, place);
            if (place == 0) foreach (var unit in level) tally.First(unit, weights[lane..], Lanes.Count, scale);
        }
    }

    void CountWins(int[] wins, ReadOnlySpan<double> scores, int draws)
    {
        for (var unit = 0; unit < units; unit++)
            for (var other = 0; other < units; other++)
                wins[(unit * units) + other] += CountAbove(scores.Slice(unit * Lanes.Count, draws), scores.Slice(other * Lanes.Count, draws));
    }

    static int CountAbove(ReadOnlySpan<double> own, ReadOnlySpan<double> others)
    {
        var count = 0;
        for (var i = 0; i < own.Length; i++) count += own[i] > others[i] ? 1 : 0;
        return count;
    }
}
