using System.Collections.Immutable;

namespace FixScore.Pairing;

/// <summary>What it costs at the bench to go from one trial to the next.</summary>
/// <remarks>An implementation must give the same for the same parts, everywhere, and more parts never for less.</remarks>
public interface IRebuildCosts
{
    /// <summary>Seconds to take so many candidates out of both units, exchange them and close the units again; <c>null</c> when not known.</summary>
    /// <param name="candidates">Ids of the candidates that change place, in the order of the belief; one at least.</param>
    decimal? SecondsToExchange(ImmutableArray<string> candidates);
}
