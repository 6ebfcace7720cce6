using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>Orders the units of one draw by score, best first. Its memory is used again from draw to draw. Not thread safe.</summary>
/// <remarks>
/// Scores are dealt into as many equal bands as there are units, then moved to their places by insertion, which is short
/// since most bands hold one or two. Where scores crowd, an ordinary sort takes over. Only comparisons decide, so either way
/// gives the same order, level units apart.
/// </remarks>
sealed class PlaceSort(int units)
{
    readonly double[] _raw = new double[units];
    readonly int[] _band = new int[units];
    readonly int[] _ends = new int[units + 1];
    readonly double[] _keys = new double[units];
    readonly int[] _order = new int[units];

    /// <summary>Numbers of the units, best first.</summary>
    public ReadOnlySpan<int> Order => _order;

    /// <summary>Scores times -1, upwards, as in <see cref="Order"/>.</summary>
    public ReadOnlySpan<double> Keys => _keys;

    /// <summary>Orders by the scores in one lane.</summary>
    public void Sort(ReadOnlySpan<double> scores, int lane)
    {
        var (low, high) = Read(scores[lane..]);
        var scale = (units - 1) / (high - low);
        if (!double.IsFinite(scale)) Ordinary();
        else
        {
            Deal(low, scale);
            if (!Insert()) Ordinary();
        }
    }

    (double Low, double High) Read(ReadOnlySpan<double> scores)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        unchecked
        {
            for (var i = 0; i < _raw.Length; i++)
            {
                var key = -scores[i * Lanes.Count];
                _raw[i] = key;
                low = key < low ? key : low;
                high = key > high ? key : high;
            }
        }
        return (low, high);
    }

    void Deal(double low, double scale)
    {
        unchecked
        {
            var (raw, band, ends) = (_raw, _band, _ends);
            Array.Clear(ends);
            for (var i = 0; i < raw.Length; i++) ends[band[i] = (int)((raw[i] - low) * scale)]++;
            for (int i = 0, sum = 0; i < ends.Length; i++) (ends[i], sum) = (sum, sum + ends[i]);
            for (var i = 0; i < raw.Length; i++)
            {
                var place = ends[band[i]]++;
                _keys[place] = raw[i];
                _order[place] = i;
            }
        }
    }

    bool Insert()
    {
        unchecked
        {
            var (keys, order, left) = (_keys, _order, 16 * _keys.Length);
            for (var i = 1; i < keys.Length; i++)
            {
                var (key, unit, at) = (keys[i], order[i], i);
                for (; at > 0 && keys[at - 1] > key; at--) (keys[at], order[at]) = (keys[at - 1], order[at - 1]);
                (keys[at], order[at]) = (key, unit);
                if ((left -= i - at) < 0) return false;
            }
        }
        return true;
    }

    void Ordinary()
    {
        for (var i = 0; i < units; i++) (_keys[i], _order[i]) = (_raw[i], i);
        Array.Sort(_keys, _order);
    }
}
