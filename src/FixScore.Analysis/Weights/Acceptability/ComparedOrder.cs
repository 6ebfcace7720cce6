using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>Compares all units with all: a unit's place is how many are above. No branch depends on a score, which is quickest for a few dozen. Not thread safe.</summary>
/// <remarks>
/// Scores are compared as floats, twice as many at a time, after the least is taken off. Both steps round but never turn an
/// order round: they can only make scores level that are not. Then places add up to less than n (n - 1) / 2, and the lane is not told.
/// </remarks>
sealed class ComparedOrder(int units) : IBlockOrder
{
    readonly float[] _short = new float[units * Lanes.Count];

    public int Rank(ReadOnlySpan<double> scores, Span<int> places, int stride, Span<int> firsts)
    {
        for (var lane = 0; lane < Lanes.Count; lane += Vector<float>.Count) Shorten(scores, lane);
        var level = 0;
        for (var lane = 0; lane < Lanes.Count; lane += Vector<int>.Count) level |= Compare(places[lane..], lane, stride, firsts);
        return level;
    }

    void Shorten(ReadOnlySpan<double> scores, int lane)
    {
        unchecked
        {
            var (one, two) = (Lanes.At(scores, lane), Lanes.At(scores, lane + Vector<double>.Count));
            for (var at = lane + Lanes.Count; at < _short.Length; at += Lanes.Count)
                (one, two) = (Vector.Min(one, Lanes.At(scores, at)), Vector.Min(two, Lanes.At(scores, at + Vector<double>.Count)));
            for (var at = lane; at < _short.Length; at += Lanes.Count)
                Vector.Narrow(Lanes.At(scores, at) - one, Lanes.At(scores, at + Vector<double>.Count) - two)
                    .StoreUnsafe(ref MemoryMarshal.GetArrayDataReference(_short), (nuint)at);
        }
    }

    int Compare(Span<int> places, int lane, int stride, Span<int> firsts)
    {
        unchecked
        {
            ref var scores = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(_short), lane);
            var (sum, first, end) = (Vector<int>.Zero, Vector<int>.Zero, (nint)(units * Lanes.Count));
            ref var target = ref MemoryMarshal.GetReference(places);
            for (var (unit, at) = ((nint)0, (nint)0); unit < end; unit += Lanes.Count, at += stride)
            {
                var own = Vector.LoadUnsafe(ref Unsafe.Add(ref scores, unit));
                var above = Vector<int>.Zero;
                for (nint other = 0; other < end; other += Lanes.Count) above -= Vector.GreaterThan(Vector.LoadUnsafe(ref Unsafe.Add(ref scores, other)), own);
                above.StoreUnsafe(ref Unsafe.Add(ref target, at));
                sum += above;
                first = Vector.ConditionalSelect(Vector.Equals(above, Vector<int>.Zero), new Vector<int>((int)(unit / Lanes.Count)), first);
            }
            first.CopyTo(firsts[lane..]);
            return Short(sum) << lane;
        }
    }

    int Short(Vector<int> sums)
    {
        var (bits, distinct) = (0, units * (units - 1) / 2);
        for (var i = 0; i < Vector<int>.Count; i++) if (sums[i] != distinct) bits |= 1 << i;
        return bits;
    }
}
