using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>For how long a spare of a part is kept on sale, or how fast it comes.</summary>
/// <remarks>
/// <para>Option <c>measure</c> asks for years of availability, judged by <c>bands</c> (more is better), or for working days
/// until delivery, judged by <c>deliveryBands</c> (fewer is better). Of several spares for one part the best counts. A spare
/// of any part of a group counts for the whole group. A spare with audience <c>nobody</c> has the lowest points; who else can
/// buy it does not matter here.</para>
/// <para>What is unknown of a spare gives the range of all it can be. An empty list says that nothing is sold, which is the
/// lowest. Without a list, with a list that does not name the part, or where nothing of the measure is recorded, the answer
/// is unknown. Without recorded joints the groups are unknown, so that any spare may serve the part too.</para>
/// <para>Source: 7 years, 5 and 10 working days: Regulation (EU) 2023/1670 Annex II B and D 1.1(1) and (3); all else is own
/// judgement. Thread safe.</para>
/// </remarks>
public sealed class SpareTermsCriterion : IPartCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "spare-terms", 1, "Spare terms", "years a spare is kept on sale, or, less is better, working days until it comes", "a",
        Direction.MoreIsBetter,
        "Limits of 7 years, 5 and 10 days: Regulation (EU) 2023/1670 Annex II; points and other limits: own judgement, no source",
        ["joints", "joints[].integral", "spares", "spares[].part", "spares[].audience", "spares[].years", "spares[].deliveryDays"],
        SpareTermsOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(PartContext context)
    {
        var facts = SpareTermsFacts.Of(context.Case, context.Part, context.Get(SpareTermsOptions.Measure));
        var reasons = new SpareTermsReasons(context);
        if (facts.Spares.IsNone) return Outcome.Scored(context.Scale.Min, reasons.NoSpares());
        if (facts.IsUnknown) return Outcome.Unknown([.. reasons.Missing(facts)]);
        var bands = facts.Measure == SpareMeasure.Years ? SpareTermsOptions.Bands : SpareTermsOptions.DeliveryBands;
        Interval PointsOf(Spare spare) => spare.PointsOf(context, context.Points(bands, facts.Of(spare)));
        return Outcome.Scored(facts.Spares.Best(PointsOf), [.. facts.Spares.Listed.Select(spare => reasons.Of(facts, spare, PointsOf(spare)))]) with
        {
            Missing = [.. reasons.Missing(facts)],
        };
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => SpareTermsChanges.Of(context);
}
