using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>Orders the units of one draw by score, best first, level ones next to each other. Its memory is used again from draw to draw. Not thread safe.</summary>
sealed class PlaceSort(int units)
{
    readonly double[] _keys = new double[units];
    readonly int[] _order = new int[units];

    /// <summary>Numbers of the units, best first.</summary>
    public ReadOnlySpan<int> Order => _order;

    /// <summary>Orders by the scores in one lane.</summary>
    public void Sort(ReadOnlySpan<double> scores, int lane)
    {
        for (var i = 0; i < units; i++) (_keys[i], _order[i]) = (-scores[(i * Lanes.Count) + lane], i);
        Array.Sort(_keys, _order);
    }

    /// <summary>Where the group of level units ends that begins at a place, places from 0.</summary>
    public int EndOfLevel(int place)
    {
        var end = place + 1;
        while (end < units && _keys[end] == _keys[place]) end++;
        return end;
    }
}
