using System.Collections.Immutable;
using FixScore.Numbers;

namespace FixScore.Analysis.Normalising;

/// <summary>A normalisation that looks at one value alone and never turns the order of two round, or always does.</summary>
abstract class Absolute : Normalisation
{
    internal override ImmutableArray<Interval> Of(ImmutableArray<Interval> column) => [.. column.Select(Of)];

    protected abstract decimal Of(decimal value);

    Interval Of(Interval value) => ((Interval)Of(value.Low)).Hull(Of(value.High));
}

sealed class Unchanged : Absolute
{
    protected override decimal Of(decimal value) => Rounding.ToSignificant(value);
}

sealed class Goalposts(decimal worst, decimal best) : Absolute
{
    protected override decimal Of(decimal value) =>
        Math.Clamp((((Rational)value - worst) / ((Rational)best - worst)).ToDecimal(), 0m, 1m);
}

sealed class ToReference : Absolute
{
    readonly decimal reference;

    public ToReference(decimal reference)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(reference);
        this.reference = reference;
    }

    protected override decimal Of(decimal value) => ((Rational)value / reference).ToDecimal();
}
