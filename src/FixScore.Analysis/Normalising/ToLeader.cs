using System.Collections.Immutable;
using FixScore.Numbers;

namespace FixScore.Analysis.Normalising;

sealed class ToLeader(Direction direction) : Relative(direction)
{
    internal override (string Code, string Template, string Hint)? Obstacle(ImmutableArray<Interval> column) => column.All(value => value.Low > 0m)
        ? null
        : ("table.not-positive", "'{criterion}' has values that are not above 0: a share of the leader's has no meaning.", "Choose another normalisation.");

    protected override decimal Of(int unit, decimal[] values) => LessIsBetter
        ? ((Rational)values.Min() / values[unit]).ToDecimal()
        : ((Rational)values[unit] / values.Max()).ToDecimal();
}
