namespace FixScore;

/// <summary>The points a profile gives, from the worst to the best. More is always better.</summary>
/// <param name="Min">Points of the worst result.</param>
/// <param name="Max">Points of the best result; above <paramref name="Min"/>.</param>
public sealed record Scale(decimal Min, decimal Max)
{
    /// <summary>The whole scale: what is known of a score when nothing was observed.</summary>
    public Interval Whole => new(Min, Max);

    /// <summary>Points for a share of the way from worst (0) to best (1).</summary>
    public decimal At(decimal share) => Min + share * (Max - Min);
}
