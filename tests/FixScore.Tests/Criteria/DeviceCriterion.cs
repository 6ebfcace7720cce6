namespace FixScore.Tests.Criteria;

/// <summary>Judges nothing: profiles only have to name it.</summary>
sealed class DeviceCriterion(string id, params Option[] options) : IDeviceCriterion
{
    public CriterionInfo Info { get; } =
        new(id, 1, $"Title of {id}", "nothing", "1", Direction.LessIsBetter, "own judgement, no source", [], [.. options]);

    public Outcome Judge(DeviceContext context) => Outcome.Unknown();
}
