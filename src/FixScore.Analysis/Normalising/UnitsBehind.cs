namespace FixScore.Analysis.Normalising;

sealed class UnitsBehind(Direction direction) : Relative(direction)
{
    protected override decimal Of(int unit, decimal[] values)
    {
        var behind = values.Count(other => LessIsBetter ? other > values[unit] : other < values[unit]);
        var level = values.Count(other => other == values[unit]) - 1;
        return behind + level * 0.5m;
    }
}
