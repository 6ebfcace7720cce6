using System.Collections.Immutable;

namespace FixScore.Analysis.Normalising;

/// <summary>A normalisation that looks at the other units. What is better for a unit never makes it worse, what is better for another never makes it better.</summary>
/// <remarks>So the low end has the unit at its worst and all others at their best, and the high end the other way round.</remarks>
abstract class Relative(Direction direction) : Normalisation
{
    protected bool LessIsBetter { get; } = direction == Direction.LessIsBetter;

    internal override ImmutableArray<Interval> Of(ImmutableArray<Interval> column) =>
        [.. column.Select((value, unit) => new Interval(End(column, unit, favourable: false), End(column, unit, favourable: true)))];

    /// <summary>The result for one unit when all values are known.</summary>
    protected abstract decimal Of(int unit, decimal[] values);

    decimal End(ImmutableArray<Interval> column, int unit, bool favourable) =>
        Of(unit, [.. column.Select((value, other) => other == unit == favourable != LessIsBetter ? value.High : value.Low)]);
}
