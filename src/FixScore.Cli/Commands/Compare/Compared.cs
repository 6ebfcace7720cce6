using System.Collections.Immutable;
using FixScore.Analysis.Comparing;

namespace FixScore.Cli.Commands.Compare;

/// <summary>What was compared, and what came of it.</summary>
/// <param name="Names">Names of the devices or units for people.</param>
/// <param name="What">What stands in the columns: profiles or rules.</param>
/// <param name="Result">The comparison.</param>
sealed record Compared(ImmutableArray<string> Names, string What, ProfileComparison Result);
