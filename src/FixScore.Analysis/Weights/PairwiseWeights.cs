using System.Collections.Immutable;
using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Weights;

/// <summary>Weights out of comparisons of every two criteria (analytic hierarchy process).</summary>
/// <remarks>
/// Source: Saaty, A scaling method for priorities in hierarchical structures, J. Math. Psychology 15, 1977. Doubles, made with
/// + - x / and square roots only, so the same on every machine. Immutable and thread safe.
/// </remarks>
/// <param name="Eigenvector">Weights by the principal right eigenvector; sum 1.</param>
/// <param name="RowMeans">Weights by geometric means of rows (Crawford and Williams 1985); sum 1.</param>
/// <param name="LargestEigenvalue">The eigenvalue to <paramref name="Eigenvector"/>; as large as the number of criteria when the comparisons agree fully.</param>
/// <param name="ConsistencyIndex">(eigenvalue - n) / (n - 1); 0 is full agreement, less is better. 0 for one criterion.</param>
/// <param name="ConsistencyRatio">The index over that of random comparisons; up to 0.1 is commonly accepted. <c>null</c> below 3 and above 10 criteria, where no random index is at hand.</param>
public sealed record PairwiseWeights(
    ImmutableArray<double> Eigenvector, ImmutableArray<double> RowMeans, double LargestEigenvalue, double ConsistencyIndex, double? ConsistencyRatio)
{
    // Saaty 1980, for 3 to 10 criteria.
    static readonly double[] RandomIndices = [0.58, 0.90, 1.12, 1.24, 1.32, 1.41, 1.45, 1.49];

    const int MostSteps = 10_000;

    /// <summary>Weights of a matrix of comparisons.</summary>
    /// <param name="comparisons">Row by row, how many times as important the row's criterion is as the column's; above 0, each the reciprocal of its mirror image. Only those above the diagonal are read.</param>
    /// <exception cref="ArgumentException">The matrix is empty or not square, or a comparison above the diagonal is not above 0.</exception>
    public static PairwiseWeights Of(IReadOnlyList<IReadOnlyList<decimal>> comparisons)
    {
        var matrix = Reciprocal(comparisons);
        var (weights, eigenvalue) = Power(matrix);
        var n = matrix.Length;
        var index = n == 1 ? 0 : (eigenvalue - n) / (n - 1);
        return new([.. weights], [.. Shares([.. matrix.Select(Mean)])], eigenvalue, index, n is >= 3 and <= 10 ? index / RandomIndices[n - 3] : null);
    }

    static double[][] Reciprocal(IReadOnlyList<IReadOnlyList<decimal>> comparisons)
    {
        var n = comparisons.Count;
        if (n == 0 || comparisons.Any(row => row.Count != n)) throw new ArgumentException("The matrix must be square.", nameof(comparisons));
        return [.. Enumerable.Range(0, n).Select(row => Enumerable.Range(0, n).Select(column => Entry(comparisons, row, column)).ToArray())];
    }

    static double Entry(IReadOnlyList<IReadOnlyList<decimal>> comparisons, int row, int column)
    {
        if (row == column) return 1;
        var upper = comparisons[Math.Min(row, column)][Math.Max(row, column)];
        if (upper <= 0m) throw new ArgumentException("A comparison must be above 0.", nameof(comparisons));
        return row < column ? (double)upper : 1 / (double)upper;
    }

    static (double[] Weights, double Eigenvalue) Power(double[][] matrix)
    {
        var weights = matrix.Select(_ => 1.0 / matrix.Length).ToArray();
        for (var step = 0; ; step++)
        {
            double[] next = [.. matrix.Select(row => Dot(row, weights))];
            var (shares, eigenvalue) = (Shares(next), Total(next));
            if (step == MostSteps || shares.Zip(weights).All(pair => Math.Abs(pair.First - pair.Second) <= 1e-15)) return (shares, eigenvalue);
            weights = shares;
        }
    }

    static double Mean(double[] row)
    {
        var sum = 0.0;
        foreach (var value in row) sum += Elementary.Log(value);
        return Elementary.Exp(sum / row.Length);
    }

    static double Dot(double[] row, double[] weights)
    {
        var sum = 0.0;
        for (var i = 0; i < row.Length; i++) sum += row[i] * weights[i];
        return sum;
    }

    static double Total(double[] values)
    {
        var sum = 0.0;
        foreach (var value in values) sum += value;
        return sum;
    }

    static double[] Shares(double[] values)
    {
        var total = Total(values);
        return [.. values.Select(value => value / total)];
    }
}
