using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Uncertainty;
using FixScore.Reporting.Paper;

namespace FixScore.Cli.Commands.Compare;

/// <summary>What was compared, and what came of it.</summary>
/// <param name="Names">Names of the devices or units for people.</param>
/// <param name="What">What stands in the columns: profiles or rules.</param>
/// <param name="Result">The comparison.</param>
/// <param name="Studies">How much the ranking depends on weights, for the rules that weigh.</param>
/// <param name="Spreads">How each score can be off; empty for a table.</param>
/// <param name="Records">The texts compared: records, or the table.</param>
/// <param name="Profiles">Texts of the profiles; empty for a table.</param>
/// <param name="Bases">Texts of the profiles that these extend.</param>
sealed record Compared(
    ImmutableArray<string> Names, string What, ProfileComparison Result, ImmutableArray<WeightStudy> Studies, ImmutableArray<Spread> Spreads,
    ImmutableArray<PaperSource> Records, ImmutableArray<PaperSource> Profiles, ImmutableArray<PaperSource> Bases);

/// <summary>How one score can be off.</summary>
/// <param name="Device">Number of the device.</param>
/// <param name="Profile">Number of the profile.</param>
/// <param name="Uncertainty">How far.</param>
sealed record Spread(int Device, int Profile, ScoreUncertainty Uncertainty);
