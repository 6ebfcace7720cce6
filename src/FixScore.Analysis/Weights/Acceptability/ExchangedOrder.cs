using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>Sorts the units of several lanes side by side by a fixed sequence of exchanges. No branch depends on a score, which is quickest for hundreds and thousands. Not thread safe.</summary>
/// <remarks>
/// Merge exchange (Batcher 1968; Knuth, The Art of Computer Programming 3, algorithm 5.2.2 M). The best score less a score is 0
/// or more, so its bits as a whole number are in the order of its size; the lowest make room for the unit's number. Rounding
/// and cutting off never turn an order round: they can only make scores level that are not, and then the lane is not told.
/// </remarks>
sealed class ExchangedOrder(int units) : IBlockOrder
{
    readonly long _numbers = (long)BitOperations.RoundUpToPowerOf2((uint)units) - 1;
    readonly int _half = (int)(BitOperations.RoundUpToPowerOf2((uint)units) / 2);
    readonly long[] _keys = new long[units * Vector<long>.Count];

    static int Width => Vector<long>.Count;

    public int Rank(ReadOnlySpan<double> scores, Span<int> places, int stride, Span<int> firsts)
    {
        var level = 0;
        for (var lane = 0; lane < Lanes.Count; lane += Width)
        {
            Pack(scores, lane);
            Sort();
            level |= Level() << lane;
            for (var i = 0; i < Width; i++) firsts[lane + i] = (int)(_keys[i] & _numbers);
            Unpack(places[lane..], stride);
        }
        return level;
    }

    void Pack(ReadOnlySpan<double> scores, int lane)
    {
        unchecked
        {
            var best = Lanes.At(scores, lane);
            for (var unit = 1; unit < units; unit++) best = Vector.Max(best, Lanes.At(scores, (unit * Lanes.Count) + lane));
            for (var unit = 0; unit < units; unit++)
            {
                var behind = Vector.AsVectorInt64(best - Lanes.At(scores, (unit * Lanes.Count) + lane));
                Put(unit * Width, Vector.AndNot(behind, new Vector<long>(_numbers)) | new Vector<long>(unit));
            }
        }
    }

    void Sort()
    {
        unchecked
        {
            for (var p = _half; p > 0; p /= 2)
            {
                Exchange(p, 0, p);
                for (var q = _half; q > p; q /= 2) Exchange(p, p, q - p);
            }
        }
    }

    // Exchanges i with i + distance wherever bit p of i is as in r.
    void Exchange(int p, int r, int distance)
    {
        unchecked
        {
            ref var upper = ref MemoryMarshal.GetArrayDataReference(_keys);
            ref var lower = ref Unsafe.Add(ref upper, (nint)distance * Width);
            var (end, length) = ((nint)(units - distance) * Width, (nint)p * Width);
            if (p == 1) for (var i = (nint)r * Width; i < end; i += 2 * Width) Exchange(ref upper, ref lower, i);
            else
                for (var run = (nint)r * Width; run < end; run += 2 * length)
                    for (var (i, stop) = (run, Math.Min(run + length, end)); i < stop; i += Width) Exchange(ref upper, ref lower, i);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static void Exchange(ref long upper, ref long lower, nint index)
    {
        ref var one = ref Unsafe.Add(ref upper, index);
        ref var two = ref Unsafe.Add(ref lower, index);
        var (first, second) = (Vector.LoadUnsafe(ref one), Vector.LoadUnsafe(ref two));
        Vector.Min(first, second).StoreUnsafe(ref one);
        Vector.Max(first, second).StoreUnsafe(ref two);
    }

    int Level()
    {
        unchecked
        {
            var (level, mask) = (Vector<long>.Zero, new Vector<long>(_numbers));
            for (var i = Width; i < _keys.Length; i += Width) level |= Vector.LessThanOrEqual(At(i - Width) ^ At(i), mask);
            var bits = 0;
            for (var i = 0; i < Width; i++) if (level[i] != 0) bits |= 1 << i;
            return bits;
        }
    }

    void Unpack(Span<int> places, int stride)
    {
        unchecked
        {
            for (int place = 0, at = 0; place < units; place++)
                for (var i = 0; i < Width; i++)
                    places[((int)(_keys[at++] & _numbers) * stride) + i] = place;
        }
    }

    Vector<long> At(int index) => Vector.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(_keys), unchecked((nuint)(uint)index));

    void Put(int index, Vector<long> keys) => keys.StoreUnsafe(ref MemoryMarshal.GetArrayDataReference(_keys), unchecked((nuint)(uint)index));
}
