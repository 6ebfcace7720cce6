using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Comparison;

/// <summary>All that must be equal on both sides of a comparison.</summary>
readonly record struct Same(string Parts, string? Sources, string Function, SwapContext Context);

/// <summary>Along what trials are compared.</summary>
/// <param name="By">Its name.</param>
/// <param name="SideOf">The word that sets an observation apart; <c>null</c> leaves it out.</param>
/// <param name="SameOf">What must be equal, with what is compared blotted out.</param>
/// <param name="Bases">The words that others are held against, most wanted first.</param>
sealed record Axis(ComparedBy By, Func<Observation, string?> SideOf, Func<Observation, Same> SameOf, ImmutableArray<string> Bases)
{
    public static ImmutableArray<Axis> All { get; } =
    [
        new(ComparedBy.LockState,
            seen => WordOf(seen.Context.LockState),
            seen => new(seen.Swap.Key, seen.Swap.Sources, seen.Function, seen.Context with { LockState = null }),
            Word.All<LockState>()),
        new(ComparedBy.Procedure,
            seen => WordOf(seen.Context.Procedure),
            seen => new(seen.Swap.Key, seen.Swap.Sources, seen.Function, seen.Context with { Procedure = null }),
            [Word.Of(SwapProcedure.None)]),
        new(ComparedBy.Source,
            seen => seen.Swap.Sources == UnitKinds.Unknown ? null : seen.Swap.Sources,
            seen => new(seen.Swap.Key, null, seen.Function, seen.Context),
            [UnitKinds.Device]),
    ];

    static string? WordOf<T>(T? word) where T : struct, Enum => word is { } known ? Word.Of(known) : null;
}
