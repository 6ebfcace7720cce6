using System.Collections.Immutable;

namespace FixScore.Analysis.Normalising;

/// <summary>Normalises tables, each criterion in its own way. Stateless, so safe to use from any thread.</summary>
public static class Normaliser
{
    /// <summary>What stands in the way; empty when nothing does. Each problem points at the criterion as <c>/criteria/3</c>.</summary>
    /// <remarks>Codes: <c>table.open-value</c>, <c>table.not-positive</c>.</remarks>
    /// <param name="table">The table.</param>
    /// <param name="ways">A normalisation for each criterion.</param>
    public static ImmutableArray<Problem> ProblemsOf(UnitTable table, ImmutableArray<Normalisation> ways) =>
        [.. from criterion in Enumerable.Range(0, ways.Length)
            let obstacle = ways[criterion].Obstacle(table.Column(criterion))
            where obstacle is not null
            select Problem.Of(Severity.Error, Pointer.Root.Child("criteria").Child(criterion), obstacle.Value.Code, obstacle.Value.Template,
                obstacle.Value.Hint, ("criterion", table.Criteria[criterion]))];

    /// <summary>The table with every criterion normalised.</summary>
    /// <param name="table">The table.</param>
    /// <param name="ways">A normalisation for each criterion.</param>
    /// <exception cref="ArgumentException">There is not one for each criterion, or <see cref="ProblemsOf"/> names a problem.</exception>
    public static UnitTable Apply(UnitTable table, ImmutableArray<Normalisation> ways)
    {
        if (ways.Length != table.Criteria.Length) throw new ArgumentException("Each criterion needs a normalisation.", nameof(ways));
        if (ProblemsOf(table, ways) is [var first, ..]) throw new ArgumentException(first.Message, nameof(table));
        var columns = ways.Select((way, criterion) => way.Of(table.Column(criterion))).ToArray();
        return table with { Rows = [.. table.Units.Select((_, unit) => columns.Select(column => column[unit]).ToImmutableArray())] };
    }

    /// <summary>The table with every criterion normalised in the same way.</summary>
    /// <inheritdoc cref="Apply(UnitTable, ImmutableArray{Normalisation})"/>
    /// <param name="table">The table.</param>
    /// <param name="way">The normalisation.</param>
    public static UnitTable Apply(UnitTable table, Normalisation way) => Apply(table, [.. table.Criteria.Select(_ => way)]);
}
