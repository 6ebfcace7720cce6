using System.Collections.Immutable;

namespace FixScore.Analysis.Sensitivity;

/// <summary>Weights drawn uniformly, each from a range of its own. Immutable and thread safe.</summary>
sealed class DrawnWeights(ImmutableArray<Interval> ranges)
{
    readonly (double Low, double Width)[] _ranges = [.. ranges.Select(range => ((double)range.Low, (double)(range.High - range.Low)))];

    public double[] At(ReadOnlySpan<double> inputs)
    {
        var weights = new double[_ranges.Length];
        for (var i = 0; i < weights.Length; i++) weights[i] = _ranges[i].Low + (_ranges[i].Width * inputs[i]);
        return weights;
    }
}
