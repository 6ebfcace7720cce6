namespace FixScore.Tests.Criteria;

/// <summary>Judges nothing: profiles only have to name it.</summary>
sealed class PartCriterion(string id, params Option[] options) : IPartCriterion
{
    public CriterionInfo Info { get; } =
        new(id, 1, $"Title of {id}", "nothing", "1", Direction.LessIsBetter, "own judgement, no source", [], [.. options]);

    public Outcome Judge(PartContext context) => Outcome.Unknown();
}
