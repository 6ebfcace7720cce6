using MathNet.Numerics.Distributions;

namespace FixScore.Analysis.Assessors;

/// <summary>The three forms for one rating, with limits as Shrout and Fleiss, 1979, give them. Quantiles of F come from the library of statistics.</summary>
static class IccForms
{
    const double Upper = 0.975;

    public static IccEstimate? OneWay(IntraclassCorrelation of) => Ratio(of.BetweenTargets, of.WithinTargets, of.Judges, of.Targets - 1, of.Targets * (of.Judges - 1));

    public static IccEstimate? TwoWayMixed(IntraclassCorrelation of) => Ratio(of.BetweenTargets, of.Residual, of.Judges, of.Targets - 1, (of.Targets - 1) * (of.Judges - 1));

    public static IccEstimate? TwoWayRandom(IntraclassCorrelation of)
    {
        var (n, k, between, judges, residual) = ((double)of.Targets, (double)of.Judges, of.BetweenTargets, of.BetweenJudges, of.Residual);
        var rest = k * judges + (k * n - k - n) * residual;
        if (between + rest == 0) return null;
        var value = (between - residual) / (between + (k - 1) * residual + k * (judges - residual) / n);
        // Without residual all judges differ by constants, and the limits have no formula left.
        if (residual == 0) return new(value, value, value);
        var freedom = Freedom(n, k, value, judges / residual);
        var (upper, lower) = (F(n - 1, freedom), F(freedom, n - 1));
        return new(value, n * (between - upper * residual) / (upper * rest + n * between), n * (lower * between - residual) / (rest + n * lower * between));
    }

    // Both ways of one ratio of mean squares.
    static IccEstimate? Ratio(double between, double error, int judges, int freedomBetween, int freedomError)
    {
        if (between + error == 0) return null;
        if (error == 0) return new(1, 1, 1);
        var ratio = between / error;
        return new(Of(ratio, judges), Of(ratio / F(freedomBetween, freedomError), judges), Of(ratio * F(freedomError, freedomBetween), judges));
    }

    static double Of(double ratio, int judges) => (ratio - 1) / (ratio + judges - 1);

    // Satterthwaite's approximation.
    static double Freedom(double n, double k, double value, double ratio)
    {
        var (judges, rest) = (k * value * ratio, n * (1 + (k - 1) * value) - k * value);
        return (k - 1) * (n - 1) * Square(judges + rest) / ((n - 1) * Square(judges) + Square(rest));
    }

    static double F(double over, double under) => FisherSnedecor.InvCDF(over, under, Upper);

    static double Square(double value) => value * value;
}
