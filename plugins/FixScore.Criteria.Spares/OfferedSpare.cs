using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>Whether a spare is on sale at all; to whom does not matter here.</summary>
static class OfferedSpare
{
    public static bool IsNotSold(this Spare spare) => spare.Audience.Is(Audience.Nobody);

    /// <summary>Points of a spare: the lowest of the scale where it is not sold, and both where that is open.</summary>
    /// <param name="spare">The spare.</param>
    /// <param name="context">Where it is judged.</param>
    /// <param name="sold">Its points where it is sold.</param>
    public static Interval PointsOf(this Spare spare, PartContext context, Interval sold)
    {
        if (spare.IsNotSold()) return context.Scale.Min;
        return spare.Audience.MayBe(Audience.Nobody) ? sold.Hull(context.Scale.Min) : sold;
    }
}
