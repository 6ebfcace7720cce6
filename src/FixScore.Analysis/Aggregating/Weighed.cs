using System.Collections.Immutable;

namespace FixScore.Analysis.Aggregating;

static class Weighed
{
    /// <exception cref="ArgumentException">There is not one weight for each criterion, one is below 0, or none is above.</exception>
    public static void Check(UnitTable table, ImmutableArray<decimal> weights)
    {
        if (weights.Length != table.Criteria.Length) throw new ArgumentException("Each criterion needs a weight.", nameof(weights));
        if (weights.Any(weight => weight < 0m)) throw new ArgumentException("A weight is below 0.", nameof(weights));
        if (weights.All(weight => weight == 0m)) throw new ArgumentException("A weight must be above 0.", nameof(weights));
    }
}
