using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>Ranks the units of a block of draws and tallies their places. Not thread safe.</summary>
/// <remarks>Few units are compared all with all, draws side by side, which needs no branch; many are sorted draw by draw. Both find the same places.</remarks>
sealed class BlockRanking(int units, PlaceTally tally, double scale)
{
    const int MostCompared = 96;

    readonly PlaceSort _sort = new(units);
    readonly long[] _places = units <= MostCompared ? new long[units * Lanes.Count] : [];
    readonly long[] _sums = new long[Lanes.Count];

    /// <summary>Tallies the first <paramref name="draws"/> draws of a block.</summary>
    public void Count(ReadOnlySpan<double> weights, ReadOnlySpan<double> scores, int draws)
    {
        if (tally.Wins is { } wins) CountWins(wins, scores, draws);
        if (units <= MostCompared) CountCompared(weights, scores, draws);
        else for (var lane = 0; lane < draws; lane++) CountSorted(weights, scores, lane);
    }

    void CountCompared(ReadOnlySpan<double> weights, ReadOnlySpan<double> scores, int draws)
    {
        for (var lane = 0; lane < Lanes.Count; lane += Vector<double>.Count) Compare(scores, lane);
        unchecked
        {
            var distinct = (long)units * (units - 1) / 2;
            for (var lane = 0; lane < draws; lane++)
                if (_sums[lane] == distinct) CountPlaces(weights, lane);
                else CountSorted(weights, scores, lane);
        }
    }

    // Place of a unit: how many are above. Level units have the same, so that the sum over all falls short.
    void Compare(ReadOnlySpan<double> scores, int lane)
    {
        unchecked
        {
            var (sum, end) = (Vector<long>.Zero, units * Lanes.Count);
            for (var unit = lane; unit < end; unit += Lanes.Count)
            {
                var (own, one, two) = (Lanes.At(scores, unit), Vector<long>.Zero, Vector<long>.Zero);
                var other = lane;
                for (; other + Lanes.Count < end; other += 2 * Lanes.Count)
                {
                    one -= Vector.GreaterThan(Lanes.At(scores, other), own);
                    two -= Vector.GreaterThan(Lanes.At(scores, other + Lanes.Count), own);
                }
                if (other < end) one -= Vector.GreaterThan(Lanes.At(scores, other), own);
                one += two;
                one.StoreUnsafe(ref MemoryMarshal.GetArrayDataReference(_places), (nuint)(uint)unit);
                sum += one;
            }
            sum.StoreUnsafe(ref MemoryMarshal.GetArrayDataReference(_sums), (nuint)(uint)lane);
        }
    }

    void CountPlaces(ReadOnlySpan<double> weights, int lane)
    {
        unchecked
        {
            var (first, places, counts) = (0, _places, tally.Places);
            for (int unit = 0, row = 0, at = lane; unit < units; unit++, row += units, at += Lanes.Count)
            {
                var place = (int)places[at];
                counts[row + place]++;
                first = place == 0 ? unit : first;
            }
            tally.First(first, weights[lane..], Lanes.Count, scale);
        }
    }

    void CountSorted(ReadOnlySpan<double> weights, ReadOnlySpan<double> scores, int lane)
    {
        _sort.Sort(scores, lane);
        unchecked
        {
            var keys = _sort.Keys;
            var order = _sort.Order;
            var counts = tally.Places;
            for (var place = 0; place < order.Length;)
            {
                var end = place + 1;
                while (end < keys.Length && keys[end] == keys[place]) end++;
                if (end == place + 1) counts[(order[place] * units) + place]++;
                else tally.Share(order[place..end], place);
                if (place == 0) foreach (var unit in order[..end]) tally.First(unit, weights[lane..], Lanes.Count, scale);
                place = end;
            }
        }
    }

    void CountWins(int[] wins, ReadOnlySpan<double> scores, int draws)
    {
        for (var unit = 0; unit < units; unit++)
            for (var other = 0; other < units; other++)
                wins[(unit * units) + other] += CountAbove(scores.Slice(unit * Lanes.Count, draws), scores.Slice(other * Lanes.Count, draws));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static int CountAbove(ReadOnlySpan<double> own, ReadOnlySpan<double> others)
    {
        var count = 0;
        for (var i = 0; i < own.Length; i++) count += own[i] > others[i] ? 1 : 0;
        return count;
    }
}
