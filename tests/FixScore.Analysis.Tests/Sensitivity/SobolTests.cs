using System.Collections.Immutable;
using FixScore.Analysis.Ranking;
using FixScore.Analysis.Sensitivity;

namespace FixScore.Analysis.Tests.Sensitivity;

public sealed class SobolTests
{
    static readonly SobolOptions Many = new(65_536);

    // Ishigami and Homma (1990), a = 7, b = 0.1; analytic values as in the formulas of Saltelli et al., with V13 = 8 b^2 pi^8 / 225.
    [Fact]
    public void Ishigami_has_its_analytic_indices()
    {
        var indices = SobolIndices.Of(Ishigami, 3, Many);
        Support.Near(3.5, indices.Mean, 0.05);
        Support.Near(13.844587940719, indices.Variance, 0.2);
        Near([0.313905191148, 0.442411144790, 0], [0.557588855210, 0.442411144790, 0.243683664062], indices, 0.02);
    }

    // Saltelli and Sobol (1995): Vi = 1 / (3 (1 + ai)^2); the values follow from it.
    [Fact]
    public void The_g_function_has_its_analytic_indices()
    {
        var indices = SobolIndices.Of(G, 8, Many);
        Support.Near(0.465424431902, indices.Variance, 0.02);
        Near([0.71619217, 0.17904804, 0.02367577, 0.00716192, 0.0000716192, 0.0000716192, 0.0000716192, 0.0000716192],
            [0.78714413, 0.24219819, 0.03431691, 0.01046039, 0.00010495, 0.00010495, 0.00010495, 0.00010495], indices, 0.02);
    }

    // Variances add: wi^2 / sum of w^2, by hand.
    [Fact]
    public void A_linear_index_is_shared_by_the_squares_of_its_weights() =>
        Near([25 / 38.0, 9 / 38.0, 4 / 38.0], [25 / 38.0, 9 / 38.0, 4 / 38.0], SobolIndices.Of(x => (0.5 * x[0]) + (0.3 * x[1]) + (0.2 * x[2]), 3, Many), 0.015);

    [Fact]
    public void A_constant_has_no_variance_to_share() =>
        Assert.Equal((4.0, 0.0, default), (SobolIndices.Of(_ => 4, 1) is var none ? none.Mean : 0, none.Variance, none.Inputs[0]));

    [Fact]
    public void The_same_seed_gives_the_same_bits_on_one_thread_and_on_two()
    {
        var one = SobolIndices.Of(Ishigami, 3, new(1_000, 5));
        Support.Equal(one.Inputs, SobolIndices.Of(Ishigami, 3, new(1_000, 5) { Threads = 2 }).Inputs);
        Assert.NotEqual(one.Inputs[0], SobolIndices.Of(Ishigami, 3, new(1_000, 6)).Inputs[0]);
    }

    [Fact]
    public void What_cannot_be_sampled_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SobolIndices.Of(_ => 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => SobolIndices.Of(_ => 1, 1, new(1)));
        Assert.Throws<ArgumentException>(() => SobolIndices.Of(_ => double.NaN, 1));
    }

    static double Ishigami(ReadOnlySpan<double> x)
    {
        var (one, two, three) = (Angle(x[0]), Angle(x[1]), Angle(x[2]));
        return Math.Sin(one) + (7 * Math.Sin(two) * Math.Sin(two)) + (0.1 * three * three * three * three * Math.Sin(one));
    }

    static double Angle(double unit) => Math.PI * ((2 * unit) - 1);

    static double G(ReadOnlySpan<double> x)
    {
        double[] a = [0, 1, 4.5, 9, 99, 99, 99, 99];
        var product = 1.0;
        for (var i = 0; i < a.Length; i++) product *= (Math.Abs((4 * x[i]) - 2) + a[i]) / (1 + a[i]);
        return product;
    }

    // Within a fixed tolerance, and within 4 of the standard errors that are stated.
    static void Near(double[] first, double[] total, SobolIndices actual, double within)
    {
        foreach (var (i, index) in actual.Inputs.Index())
        {
            Support.Near(first[i], index.First, Math.Min(within, (4 * index.FirstError) + 1e-6));
            Support.Near(total[i], index.Total, Math.Min(within, (4 * index.TotalError) + 1e-6));
        }
    }
}
