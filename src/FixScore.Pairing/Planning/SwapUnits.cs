using System.Collections.Frozen;
using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Pairing.Inference;
using FixScore.Records;

namespace FixScore.Pairing.Planning;

/// <summary>What is swapped as one and not settled yet, in one context.</summary>
sealed record SwapUnits(ImmutableArray<SwapUnit> Open, ImmutableArray<string> Tied, ImmutableArray<string> Cleared, ImmutableArray<SwapUnit> Stuck, ImmutableArray<ImmutableArray<string>> Flagged)
{
    public static SwapUnits Of(TeardownCase source, SwapContext context, TiePriors priors)
    {
        var foreign = new ForeignParts(source.Record, source.Derive<PartGroups>());
        var verdicts = source.Derive<PairingVerdicts>().Contexts.FirstOrDefault(each => each.Context == context);
        var all = All(source, foreign, priors);
        Verdict VerdictOn(SwapUnit unit) => verdicts?.Of(unit.Id)!.OfGroup.Verdict ?? Verdict.Untested;
        var unsettled = all.Where(unit => VerdictOn(unit) is Verdict.Suspect or Verdict.Untested).ToArray();
        ImmutableArray<SwapUnit> open = [.. unsettled.Where(unit => CanBeMoved(source, unit))];
        ImmutableArray<string> tied = [.. all.Where(unit => VerdictOn(unit) == Verdict.Paired).Select(unit => unit.Id)];
        return new(
            open, tied, [.. all.Where(unit => VerdictOn(unit) == Verdict.Cleared).Select(unit => unit.Id)], [.. unsettled.Except(open)],
            verdicts is null ? [] : Suspicions(verdicts, foreign, all, open, tied));
    }

    static ImmutableArray<SwapUnit> All(TeardownCase source, ForeignParts foreign, TiePriors priors) =>
    [
        .. from part in foreign.Judged
            let members = foreign.CandidatesOfGroup(part)
            where members.Length > 0 && members[0] == part.Id
            select new SwapUnit(
                part, [.. source.Record.Parts.Where(each => members.Contains(each.Id))],
                1 - source.Record.Parts.Where(each => members.Contains(each.Id)).Aggregate(1m, (free, each) => free * (1 - priors.Of(each.Role)))),
    ];

    static bool CanBeMoved(TeardownCase source, SwapUnit unit) => !unit.Parts.Any(part => part.Reach.Is(Reach.NotPossible))
        && source.RouteTo(unit.Id, RouteCost.Operations).Reachability != Reachability.Unreachable;

    // A flag that may be the doing of a part that cannot be moved, or is explained already, tells nothing of the others.
    static ImmutableArray<ImmutableArray<string>> Suspicions(
        ContextVerdicts verdicts, ForeignParts foreign, ImmutableArray<SwapUnit> all, ImmutableArray<SwapUnit> open, ImmutableArray<string> tied)
    {
        var said = StatementReader.Read(verdicts.Trials, foreign);
        var cleared = said.Clearances.SelectMany(clearance => clearance.Parts).ToFrozenSet(StringComparer.Ordinal);
        var unitOf = all.SelectMany(unit => unit.Parts, (unit, part) => (part.Id, Unit: unit)).ToFrozenDictionary(pair => pair.Id, pair => pair.Unit, StringComparer.Ordinal);
        return
        [
            .. said.Flags.Select(flag => flag.Suspects.Where(part => !cleared.Contains(part)).Select(part => unitOf[part]).Distinct().ToImmutableArray())
                .Where(suspects => suspects.All(open.Contains) && !suspects.Any(unit => tied.Contains(unit.Id)))
                .Select(suspects => suspects.Select(unit => unit.Id).ToImmutableArray()),
        ];
    }
}
