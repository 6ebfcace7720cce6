using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

static class TrialMembers
{
    static readonly Place<SwapTrial> Swaps = RecordRoot.Place.Each("swaps", r => r.Swaps, (r, swaps) => r with { Swaps = swaps });

    static readonly Place<FunctionCheck> Checks =
        Swaps.Each("checks", s => EntryList.Of(s.Checks), (s, list) => s with { Checks = list.AsArray() });

    static readonly Place<LockTrial> Locks = RecordRoot.Place.Each("locks", r => r.Locks, (r, locks) => r with { Locks = locks });

    static readonly Place<FunctionLoss> Losses =
        Locks.Each("losses", l => EntryList.Of(l.Losses), (l, list) => l with { Losses = list.AsArray() });

    public static ImmutableArray<Member> All =>
    [
        RecordRoot.Place.Open("swaps", r => r with { Swaps = default }), Swaps.Itself,
        Swaps.Known("id"), Swaps.Known("host"), Swaps.Known("installed"), Swaps.Known("checks"),
        // Not observed is a context of its own for these three, so leaving them out does not merely widen.
        Swaps.Known("lockState", s => s.LockState is not null), Swaps.Known("software", s => s.Software is not null),
        Swaps.Known("procedure", s => s.Procedure is not null),
        Checks.Itself, Checks.Known("function"),
        // A control that flags a fault of its host excuses other trials: only losing all results must widen.
        Checks.OpenAllAtOnce("result", c => c with { Result = SwapResult.Untested }),
        Checks.Open("implicates", c => c with { Implicates = default }),
        RecordRoot.Place.Open("locks", r => r with { Locks = default }), Locks.Itself,
        Locks.Known("id"), Locks.Known("unit"), Locks.Known("from"), Locks.Known("to"), Locks.Known("losses"),
        Locks.Open("outcome", l => l with { Outcome = default }),
        Locks.Open("waitDays", l => l with { WaitDays = null }),
        Locks.Open("wipesData", l => l with { WipesData = null }),
        Locks.Open("warrantyNotice", l => l with { WarrantyNotice = null }),
        Losses.Itself, Losses.Known("function"),
        Losses.Open("recovers", l => l with { Recovers = default }),
    ];
}
