using System.Collections.Immutable;
using FixScore.Numbers;

namespace FixScore.Analysis.Normalising;

sealed class ZScore(Direction direction) : Normalisation
{
    internal override (string Code, string Template, string Hint)? Obstacle(ImmutableArray<Interval> column) => column.All(value => value.IsExact)
        ? null
        : ("table.open-value", "'{criterion}' has open values: its standard deviation is not known.", "Choose another normalisation, or narrow the values.");

    internal override ImmutableArray<Interval> Of(ImmutableArray<Interval> column)
    {
        var mean = Sum(column.Select(value => (Rational)value.Low)) / column.Length;
        var squares = Sum(column.Select(value => Square(value.Low - mean)));
        return [.. column.Select(value => (Interval)Of(value.Low - mean, squares, column.Length))];
    }

    // The root of the exact square, so that two values that differ keep their order however close they are.
    decimal Of(Rational distance, Rational squares, int units)
    {
        if (squares.Sign == 0) return 0m;
        var magnitude = Means.WeightedGeometric((1m, 1m), (1m, (Square(distance) * (units - 1) / squares).ToDecimal()));
        return distance.Sign < 0 == (direction == Direction.LessIsBetter) ? magnitude : -magnitude;
    }

    static Rational Square(Rational value) => value * value;

    static Rational Sum(IEnumerable<Rational> values) => values.Aggregate((Rational)0m, (sum, value) => sum + value);
}
