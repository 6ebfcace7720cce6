using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Safety;

/// <summary>The words that can have a level.</summary>
static class HazardWords
{
    public const string HeatedCell = "heated-cell";
    public const string None = "none";

    /// <summary>The hazards of the record format; what is counted.</summary>
    public static readonly ImmutableArray<string> Hazards = Word.All<Hazard>();

    /// <summary>All an exposure can be of which nothing is known.</summary>
    public static readonly ImmutableArray<string> Any = [HeatedCell, .. Hazards, None];

    public static readonly ImmutableArray<string> Cell = [Word.Of(Hazard.LithiumCell)];

    public static readonly ImmutableArray<string> Hot = [Word.Of(Hazard.HotSurface)];

    /// <summary>A solvent burns or fumes, or does both.</summary>
    public static readonly ImmutableArray<string> Solvent = [Word.Of(Hazard.FlammableSolvent), Word.Of(Hazard.Fumes)];
}
