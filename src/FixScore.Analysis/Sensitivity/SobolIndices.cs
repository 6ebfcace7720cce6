using System.Collections.Immutable;
using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Sensitivity;

/// <summary>Variance-based sensitivity of a function of independent inputs, each uniform on [0, 1).</summary>
/// <remarks>
/// <para>Sources: Saltelli et al., Variance based sensitivity analysis of model output, Computer Physics Communications 181,
/// 2010, table 2 (b) for first-order indices and (f), Jansen 1999, for total ones. Outputs are taken less their mean, which
/// changes no index and makes the estimates closer. Base matrices are pseudorandom. Standard errors are those of a quotient
/// of means, to first order.</para>
/// <para>A constant function has variance 0, and all its indices and errors are 0. The same function, samples and seed give
/// the same result to the last bit. Immutable and thread safe.</para>
/// </remarks>
/// <param name="Mean">Mean of the output.</param>
/// <param name="Variance">Variance of the output.</param>
/// <param name="Inputs">An index for each input.</param>
public sealed record SobolIndices(double Mean, double Variance, ImmutableArray<SobolIndex> Inputs)
{
    /// <summary>Estimates the indices.</summary>
    /// <param name="function">Gives a finite output for any inputs, the same for the same.</param>
    /// <param name="inputs">How many inputs it takes, 1 or more.</param>
    /// <param name="options">Samples and seed; <c>null</c> for the usual ones.</param>
    /// <exception cref="ArgumentOutOfRangeException">No input, fewer than 2 samples, or no thread.</exception>
    /// <exception cref="ArgumentException">The function gave something that is not a finite number.</exception>
    public static SobolIndices Of(Func<ReadOnlySpan<double>, double> function, int inputs, SobolOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(function);
        ArgumentOutOfRangeException.ThrowIfLessThan(inputs, 1);
        var sample = SobolSample.Of(function, inputs, (options ?? new()).Checked());
        var squares = sample.First.Zip(sample.Second, (one, two) => ((one * one) + (two * two)) / 2).ToArray();
        var variance = Sums.Mean(squares);
        return new(sample.Mean, variance, [.. sample.Mixed.Select(mixed => variance == 0 ? default : Index(sample, mixed, squares, variance))]);
    }

    static SobolIndex Index(SobolSample sample, double[] mixed, double[] squares, double variance)
    {
        var (first, total) = (new double[mixed.Length], new double[mixed.Length]);
        for (var i = 0; i < mixed.Length; i++)
        {
            var step = mixed[i] - sample.First[i];
            (first[i], total[i]) = (sample.Second[i] * step, step * step / 2);
        }
        var (one, all) = (Sums.Mean(first) / variance, Sums.Mean(total) / variance);
        return new(one, Error(first, squares, one, variance), all, Error(total, squares, all, variance));
    }

    // Of mean(values) / mean(squares), whose quotient and divisor are given.
    static double Error(double[] values, double[] squares, double quotient, double divisor)
    {
        var sum = 0.0;
        for (var i = 0; i < values.Length; i++)
        {
            var rest = values[i] - (quotient * squares[i]);
            sum += rest * rest;
        }
        return Math.Sqrt(sum / values.Length / (values.Length - 1)) / divisor;
    }
}
