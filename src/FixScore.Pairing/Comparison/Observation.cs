using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Comparison;

/// <summary>What one trial saw of one function after a swap.</summary>
/// <param name="Trial">The trial.</param>
/// <param name="Context">Its context.</param>
/// <param name="Swap">What was swapped.</param>
/// <param name="Function">The function.</param>
/// <param name="Results">All results its checks leave possible, best first.</param>
sealed record Observation(SwapTrial Trial, SwapContext Context, Swap Swap, string Function, ImmutableArray<SwapResult> Results);

/// <summary>Foreign parts, and what the units are that they came from.</summary>
/// <param name="Parts">Ids of the parts, in the order of the record.</param>
/// <param name="Sources">The kinds of unit: one word when it is the same for all parts.</param>
sealed record Swap(ImmutableArray<string> Parts, string Sources)
{
    /// <summary>The parts as a key; ids hold no blank.</summary>
    public string Key { get; } = string.Join(' ', Parts);
}
