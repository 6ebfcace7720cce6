using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>Counts how often units are first under weights of their own, these side by side as lanes. Not thread safe.</summary>
sealed class CentralCheck
{
    readonly (int Unit, double[] Weights)[] _central;
    readonly double[] _scores;
    readonly double[][] _blocks;

    public CentralCheck((int Unit, double[] Weights)[] central, int units, int criteria)
    {
        _central = central;
        _scores = new double[units * Lanes.Count];
        _blocks = [.. central.Chunk(Lanes.Count).Select(block => Block(block, criteria))];
        Firsts = new int[central.Length];
    }

    public int[] Firsts { get; }

    /// <summary>Counts one draw of the values.</summary>
    public void Count(double[][] rows)
    {
        for (var block = 0; block < _blocks.Length; block++)
        {
            DrawnValues.Score(rows, _blocks[block], _scores);
            for (var i = block * Lanes.Count; i < Math.Min(Firsts.Length, (block + 1) * Lanes.Count); i++)
                if (IsFirst(_central[i].Unit, i % Lanes.Count)) Firsts[i]++;
        }
    }

    bool IsFirst(int unit, int lane)
    {
        var own = _scores[(unit * Lanes.Count) + lane];
        for (var i = lane; i < _scores.Length; i += Lanes.Count)
            if (_scores[i] > own) return false;
        return true;
    }

    static double[] Block((int Unit, double[] Weights)[] block, int criteria)
    {
        var weights = new double[criteria * Lanes.Count];
        foreach (var (lane, (_, own)) in block.Index())
            for (var i = 0; i < criteria; i++) weights[(i * Lanes.Count) + lane] = own[i];
        return weights;
    }
}
