using System.Numerics;
using System.Runtime.CompilerServices;
using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>The values of a table as doubles, open ones drawn uniformly between their ends, and scores from them. Immutable and thread safe.</summary>
sealed class DrawnValues
{
    readonly double[][] _rows;
    readonly (int Criterion, double Low, double Width, int Number)[][] _open;
    readonly RandomCounter _random;
    readonly int _openCount;

    public DrawnValues(UnitTable table, RandomCounter random)
    {
        var number = 0;
        _random = random;
        _rows = [.. table.Rows.Select(row => row.Select(value => (double)value.Low).ToArray())];
        _open = [.. table.Rows.Select(row => row.Index().Where(cell => !cell.Item.IsExact)
            .Select(cell => (cell.Index, (double)cell.Item.Low, (double)cell.Item.High - (double)cell.Item.Low, number++)).ToArray())];
        _openCount = number;
    }

    public bool AreOpen => _openCount > 0;

    public int Units => _rows.Length;

    /// <summary>Scores of a block of draws: the sum of weight x value in the order of the criteria, each product and each sum rounded on its own.</summary>
    /// <param name="first">Number of the block's first draw.</param>
    /// <param name="weights">A row of lanes for each criterion.</param>
    /// <param name="scores">Room for a row of lanes for each unit.</param>
    public void Score(long first, ReadOnlySpan<double> weights, Span<double> scores)
    {
        Span<double> value = stackalloc double[Lanes.Count];
        for (var unit = 0; unit < _rows.Length; unit++)
        {
            var own = scores.Slice(unit * Lanes.Count, Lanes.Count);
            if (_open[unit].Length == 0) Weigh(_rows[unit], weights, own);
            else WeighOpen(unit, first, weights, value, own);
        }
    }

    /// <summary>Scores under other weights of the values that one draw has; the rows are made by <see cref="At"/>.</summary>
    public static void Score(double[][] rows, ReadOnlySpan<double> weights, Span<double> scores)
    {
        for (var unit = 0; unit < rows.Length; unit++) Weigh(rows[unit], weights, scores.Slice(unit * Lanes.Count, Lanes.Count));
    }

    /// <summary>All values in one draw.</summary>
    public double[][] At(long draw) => [.. _rows.Select((row, unit) =>
    {
        var drawn = (double[])row.Clone();
        foreach (var (criterion, low, width, number) in _open[unit]) drawn[criterion] = low + (width * _random.Unit((draw * _openCount) + number));
        return drawn;
    })];

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static void Weigh(double[] row, ReadOnlySpan<double> weights, Span<double> own)
    {
        unchecked
        {
            for (var lane = 0; lane < Lanes.Count; lane += 2 * Vector<double>.Count)
            {
                var (one, two, at) = (Vector<double>.Zero, Vector<double>.Zero, lane);
                foreach (var value in row)
                {
                    var wide = new Vector<double>(value);
                    one += wide * Lanes.At(weights, at);
                    two += wide * Lanes.At(weights, at + Vector<double>.Count);
                    at += Lanes.Count;
                }
                Lanes.Put(one, own, lane);
                Lanes.Put(two, own, lane + Vector<double>.Count);
            }
        }
    }

    void WeighOpen(int unit, long first, ReadOnlySpan<double> weights, Span<double> value, Span<double> own)
    {
        var (row, next) = (_rows[unit], 0);
        own.Clear();
        for (var criterion = 0; criterion < row.Length; criterion++)
        {
            var isOpen = next < _open[unit].Length && _open[unit][next].Criterion == criterion;
            if (isOpen) Draw(_open[unit][next++], first, value);
            else value.Fill(row[criterion]);
            for (var lane = 0; lane < Lanes.Count; lane += Vector<double>.Count)
                Lanes.Put(Lanes.At(own, lane) + (Lanes.At(value, lane) * Lanes.At(weights, (criterion * Lanes.Count) + lane)), own, lane);
        }
    }

    void Draw((int Criterion, double Low, double Width, int Number) open, long first, Span<double> value)
    {
        for (var lane = 0; lane < Lanes.Count; lane++) value[lane] = open.Low + (open.Width * _random.Unit(((first + lane) * _openCount) + open.Number));
    }
}
