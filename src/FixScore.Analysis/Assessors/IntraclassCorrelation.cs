using System.Collections.Immutable;

namespace FixScore.Analysis.Assessors;

/// <summary>Share of the spread of ratings that lies between targets rather than judges or chance. 1: all judges agree.</summary>
/// <remarks>
/// P. E. Shrout and J. L. Fleiss, Intraclass correlations: uses in assessing rater reliability, Psychological Bulletin 86(2), 1979,
/// with limits of 95 %. A coefficient is <c>null</c> when all ratings are equal. Immutable and thread safe.
/// </remarks>
/// <param name="Targets">How many targets were rated, n.</param>
/// <param name="Judges">How many judges rated each, k.</param>
/// <param name="BetweenTargets">Mean square between targets.</param>
/// <param name="WithinTargets">Mean square within targets.</param>
/// <param name="BetweenJudges">Mean square between judges.</param>
/// <param name="Residual">Residual mean square.</param>
public sealed record IntraclassCorrelation(int Targets, int Judges, double BetweenTargets, double WithinTargets, double BetweenJudges, double Residual)
{
    /// <summary>Analyses ratings.</summary>
    /// <param name="ratings">A row for each target, a rating by each judge; at least two of both.</param>
    /// <exception cref="ArgumentException">There are fewer, or rows differ in length.</exception>
    public static IntraclassCorrelation Of(ImmutableArray<ImmutableArray<decimal>> ratings)
    {
        if (ratings.Length < 2 || ratings[0].Length < 2 || ratings.Any(row => row.Length != ratings[0].Length))
            throw new ArgumentException("At least two targets must be rated by the same two judges or more.", nameof(ratings));
        var (n, k) = (ratings.Length, ratings[0].Length);
        var mean = ratings.Sum(row => row.Sum()) / (n * k);
        var all = ratings.Sum(row => row.Sum(value => Square(value - mean)));
        var targets = ratings.Sum(row => k * Square(row.Sum() / k - mean));
        var judges = Enumerable.Range(0, k).Sum(judge => n * Square(ratings.Sum(row => row[judge]) / n - mean));
        var residual = Math.Max(0m, all - targets - judges);
        return new(n, k, (double)targets / (n - 1), (double)(all - targets) / (n * (k - 1)), (double)judges / (k - 1), (double)residual / ((n - 1) * (k - 1)));
    }

    /// <summary>ICC(1,1): each target has other judges; one rating.</summary>
    public IccEstimate? OneWay => IccForms.OneWay(this);

    /// <summary>ICC(2,1): the judges are a sample of judges; absolute agreement of one rating.</summary>
    public IccEstimate? TwoWayRandom => IccForms.TwoWayRandom(this);

    /// <summary>ICC(3,1): these judges only; consistency of one rating.</summary>
    public IccEstimate? TwoWayMixed => IccForms.TwoWayMixed(this);

    /// <summary>ICC(1,k): the mean of k ratings.</summary>
    public IccEstimate? OneWayMean => OneWay?.OfMean(Judges);

    /// <summary>ICC(2,k): the mean of k ratings.</summary>
    public IccEstimate? TwoWayRandomMean => TwoWayRandom?.OfMean(Judges);

    /// <summary>ICC(3,k): the mean of k ratings.</summary>
    public IccEstimate? TwoWayMixedMean => TwoWayMixed?.OfMean(Judges);

    static decimal Square(decimal value) => value * value;
}
