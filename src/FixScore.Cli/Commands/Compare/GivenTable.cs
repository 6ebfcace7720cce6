using System.Collections.Immutable;
using FixScore.Analysis;

namespace FixScore.Cli.Commands.Compare;

/// <summary>A table from a file, and what the file says of its columns.</summary>
/// <param name="Table">The values as they stand; open ones are intervals.</param>
/// <param name="Weights">Weight of each column; 1 where none is given.</param>
/// <param name="Directions">Whether more or less is better; more where nothing is said.</param>
/// <param name="Worst">The value of each column that counts 0; <c>null</c> where none is given.</param>
/// <param name="Best">The value of each column that counts 1; <c>null</c> where none is given.</param>
sealed record GivenTable(
    UnitTable Table, ImmutableArray<decimal> Weights, ImmutableArray<Direction> Directions, ImmutableArray<decimal?> Worst, ImmutableArray<decimal?> Best)
{
    public bool HasGoalposts => Worst.Concat(Best).All(post => post is not null);
}
