using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>Design changes for <see cref="SpareTermsCriterion"/>: listed spares kept on sale for longer, or delivered faster.</summary>
/// <remarks>One change for all spares: a maker has one store. It goes as far as the best band asks.</remarks>
static class SpareTermsChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context)
    {
        var (measure, form) = context.Get(SpareTermsOptions.Measure) == SpareMeasure.Years
            ? (SpareMeasure.Years, BandForm.AtLeast) : (SpareMeasure.DeliveryDays, BandForm.AtMost);
        var bands = context.Get(measure == SpareMeasure.Years ? SpareTermsOptions.Bands : SpareTermsOptions.DeliveryBands);
        if (bands.Form != form) return [];
        var wanted = bands.Entries.MaxBy(band => band.Points).Limit;
        Spare[] others = [.. context.JudgedParts.SelectMany(part => SpareTermsFacts.Of(context.Case, part, measure).Spares.Listed).Distinct()
            .Where(spare => !spare.IsNotSold() && !Meets(measure, spare, wanted))];
        return others.Length == 0 ? [] : [Change(context.Case, measure, others, wanted)];
    }

    static bool Meets(SpareMeasure measure, Spare spare, decimal wanted) =>
        measure == SpareMeasure.Years ? spare.Years?.Min >= wanted : spare.DeliveryDays?.Max <= wanted;

    static DesignChange Change(TeardownCase source, SpareMeasure measure, Spare[] spares, decimal wanted)
    {
        var member = measure == SpareMeasure.Years ? "years" : "deliveryDays";
        var patch = spares.Aggregate(DesignPatch.Empty, (all, spare) => all.Set(source.At(spare), member, wanted));
        return measure == SpareMeasure.Years
            ? patch.As("spares-for-longer", Reason.Of(
                "spares-for-longer", "Keep the listed spares on sale for {years}; {spares} are not.", spares.Select(source.At),
                ("years", Value.Of(wanted, "years")), ("spares", spares.Length)))
            : patch.As("spares-faster", Reason.Of(
                "spares-faster", "Deliver the listed spares within {days}; {spares} take longer.", spares.Select(source.At),
                ("days", Value.Of(wanted, "working days")), ("spares", spares.Length)));
    }
}
