using FixScore.Numbers;

namespace FixScore.Analysis.Normalising;

sealed class OwnExtremes(Direction direction) : Relative(direction)
{
    protected override decimal Of(int unit, decimal[] values)
    {
        var (worst, best) = LessIsBetter ? (values.Max(), values.Min()) : (values.Min(), values.Max());
        return worst == best ? 0.5m : (((Rational)values[unit] - worst) / ((Rational)best - worst)).ToDecimal();
    }
}
