using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>What <see cref="SpareTermsCriterion"/> says: one reason for each spare, with its points.</summary>
sealed class SpareTermsReasons(PartContext context)
{
    readonly SpareOfferReasons offer = new(context);

    public Reason NoSpares() => offer.NoSpares();

    public Reason Of(SpareTermsFacts facts, Spare spare, Interval points)
    {
        if (spare.IsNotSold()) return offer.NotSold(spare);
        var (range, at) = (facts.Of(spare), context.Case.At(spare));
        return (facts.Measure == SpareMeasure.Years
            ? Reason.Of("spare-years", "The spare for {part} is kept on sale for {years}.", [at], ("part", spare.Part), ("years", OpenRange.Shown(range, "years")))
            : Reason.Of("spare-delivery", "The spare for {part} comes within {days}.", [at], ("part", spare.Part), ("days", OpenRange.Shown(range, "working days"))))
            with { Points = points };
    }

    public IEnumerable<Missing> Missing(SpareTermsFacts facts) => offer.Missing(facts.Spares, spare => Open(facts, spare));

    static IEnumerable<string> Open(SpareTermsFacts facts, Spare spare) =>
        facts.Of(spare).IsExact ? [] : [facts.Measure == SpareMeasure.Years ? "years" : "deliveryDays"];
}
