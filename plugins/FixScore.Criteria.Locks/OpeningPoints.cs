using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Criteria.Locks;

/// <summary>Points for one attempt to open the lock: those of its outcome, less what each cost takes off the best of the scale.</summary>
sealed class OpeningPoints(CriterionContext context, OpeningFacts facts)
{
    public Interval Outcome => context.Points(LockFreedomOptions.Outcomes, facts.Trial.Outcome.Possible().Select(Word.Of));

    public Interval Wait => context.Points(LockFreedomOptions.WaitBands, facts.WaitDays);

    public Interval Wiping => context.Points(LockFreedomOptions.Wiping, facts.WipesData);

    public Interval Warranty => context.Points(LockFreedomOptions.Warranty, facts.WarrantyNotice);

    public Interval Of(LostFunction lost) => context.Points(LockFreedomOptions.Losses, lost.Recovers.Possible().Select(Word.Of));

    /// <summary>All together, within the scale; the hull over the outcomes that are possible.</summary>
    public Interval Total => Interval.HullOf(facts.Trial.Outcome.Possible().Select(After))!.Value;

    Interval After(LockOutcome outcome)
    {
        var start = context.Points(LockFreedomOptions.Outcomes, Word.Of(outcome));
        Interval[] costs = [.. facts.Losses.Select(Of), .. outcome == LockOutcome.Done ? [Wait, Wiping, Warranty] : Array.Empty<Interval>()];
        return new(Left(start.Low, costs.Select(cost => cost.Low)), Left(start.High, costs.Select(cost => cost.High)));
    }

    decimal Left(decimal start, IEnumerable<decimal> costs) =>
        Math.Clamp(start - costs.Sum(points => context.Scale.Max - points), context.Scale.Min, context.Scale.Max);
}
