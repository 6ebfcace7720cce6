using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Pairing;

/// <summary>What happens when a part is replaced by one of another unit: the worst result that swap trials prove, or the maker's demands.</summary>
/// <remarks>
/// <para><b>Trials.</b> The worst over all contexts that count (option <c>procedures</c>) and in which the part was tried;
/// contexts in which it was not tried say nothing. What is replaced with the part, its group, is judged with it. A suspect
/// scores from the worst result its trials leave possible to the best; a part that was never tried, or only in trials that
/// contradict each other, scores over all results. A procedure that makes a tied part work is a reason without points.</para>
/// <para><b>Demands.</b> Notification and authorisation as recorded for the part; the worse counts, and the lower of trials
/// and demands is the score. A part that trials clear needs no record of demands (option <c>serialisedUnknown</c>); for
/// every other part an unknown demand widens the score.</para>
/// <para>Not applicable to inert parts and to the main board with what is replaced with it. Unknown when the part was never
/// tried and no demand is recorded.</para>
/// </remarks>
public sealed class SoftwarePairingCriterion : IPartCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "software-pairing", 1, "Software pairing",
        "worst effect of a part from another unit, and what the maker demands before it is accepted", "effect",
        Direction.LessIsBetter,
        "Effects: Oregon SB 1596 (2024), Colorado HB24-1121, Washington HB 1483 (2025); demands: Regulation (EU) 2023/1669 Annex IV 5; points: own judgement",
        ["swaps", "parts[].serialised", "parts[].inert", "joints[].integral"],
        SoftwarePairingOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(PartContext context)
    {
        var (source, part) = (context.Case, context.Part);
        if (part.Inert) return Outcome.NotApplicable(SoftwarePairingReasons.Inert(source, part));
        var facts = SoftwarePairingFacts.Of(source, part, context.Get(SoftwarePairingOptions.Procedures));
        if (!facts.IsJudged) return Outcome.NotApplicable(SoftwarePairingReasons.Board(source, part));
        if (facts.Counted.IsEmpty && facts.DemandsUnknown)
            return Outcome.Unknown(SoftwarePairingReasons.AnyTrial(source, part), SoftwarePairingReasons.Demand(source, part));
        return Scored(context, facts);
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => SoftwarePairingChanges.Of(context);

    static Outcome Scored(PartContext context, SoftwarePairingFacts facts)
    {
        var (source, part) = (context.Case, context.Part);
        var trials = facts.Counted.Select(seen => (Seen: seen, Points: PointsOf(context, seen.Results))).ToImmutableArray();
        var demands = DemandsOf(context, facts).ToImmutableArray();
        var tried = trials.IsEmpty ? PointsOf(context, SoftwarePairingFacts.AllResults) : Lowest(trials.Select(each => each.Points));
        return Outcome.Scored(
            Lowest([tried, .. demands]),
            [
                .. trials.Select(each => SoftwarePairingReasons.Of(source, part, each.Seen, each.Points)),
                .. facts.Restored.Select(seen => SoftwarePairingReasons.Restored(source, part, seen)),
                .. facts.DemandsUnknown ? [] : new[] { SoftwarePairingReasons.Demanded(source, part, Lowest(demands)) },
            ]) with { Missing = [.. MissingFrom(context, facts)] };
    }

    static IEnumerable<Interval> DemandsOf(PartContext context, SoftwarePairingFacts facts) =>
        from demand in facts.Demands
        where !(demand.IsUnknown && NeedsNoDemand(context, facts))
        select context.Points(SoftwarePairingOptions.Serialisation, demand.Possible().Select(Word.Of));

    static bool NeedsNoDemand(PartContext context, SoftwarePairingFacts facts) =>
        facts.AllCleared && context.Get(SoftwarePairingOptions.SerialisedUnknown) == WhenSerialisationUnknown.ClearedByTrials;

    static IEnumerable<Missing> MissingFrom(PartContext context, SoftwarePairingFacts facts)
    {
        if (facts.Counted.IsEmpty) yield return SoftwarePairingReasons.AnyTrial(context.Case, context.Part);
        foreach (var seen in facts.Counted)
            if (SoftwarePairingReasons.Settling(context.Case, context.Part, seen) is { } missing) yield return missing;
        if (facts.Demands.Any(demand => demand.IsUnknown) && !NeedsNoDemand(context, facts))
            yield return SoftwarePairingReasons.Demand(context.Case, context.Part);
    }

    static Interval PointsOf(PartContext context, IEnumerable<SwapResult> results) =>
        context.Points(SoftwarePairingOptions.Results, results.Select(Word.Of));

    static Interval Lowest(IEnumerable<Interval> points)
    {
        var all = points.ToArray();
        return new(all.Min(each => each.Low), all.Min(each => each.High));
    }
}
