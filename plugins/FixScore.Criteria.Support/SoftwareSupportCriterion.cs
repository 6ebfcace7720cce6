namespace FixScore.Criteria.Support;

/// <summary>For how many years software updates of all kinds asked for are promised.</summary>
/// <remarks>
/// <para>The shortest of the kinds counts; more is better. Years beyond all bands have no level and follow <c>noLevel</c>. By
/// default only whole years count; with <c>fractions</c> at <c>interpolate</c> points lie on straight lines between the limits
/// of the bands, and beyond the last step there still is no level.</para>
/// <para>Option <c>countedFrom</c> names the event that years must count from. Years counted from another event cannot be
/// converted: how far release, purchase and the end of placement on the market lie apart is not recorded. They, like years
/// that were not recorded, give the range of all they can be. Without support in the record, or without years of any kind
/// asked for, the answer is unknown; no kind asked for: not applicable.</para>
/// <para>Source: Regulation (EU) 2023/1669 Annex IV point 5, score for software updates. It is silent on fractions of years:
/// dropping them is the cautious reading. Thread safe.</para>
/// </remarks>
public sealed class SoftwareSupportCriterion : IDeviceCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "software-support", 1, "Software support", "years of updates, the shortest of the kinds asked for", "a",
        Direction.MoreIsBetter, "Regulation (EU) 2023/1669 Annex IV point 5, score for software updates",
        ["support", "support.securityUpdateYears", "support.correctiveUpdateYears", "support.functionalityUpdateYears", "support.countedFrom"],
        SoftwareSupportOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(DeviceContext context)
    {
        var kinds = context.Get(SoftwareSupportOptions.Kinds);
        if (kinds.IsEmpty) return Outcome.NotApplicable(SoftwareSupportReasons.NothingAsked());
        var facts = SoftwareSupportFacts.Of(context.Case.Record.Support, kinds, context.Get(SoftwareSupportOptions.CountedFrom));
        var missing = SoftwareSupportReasons.Missing(facts);
        if (facts.IsUnknown) return Outcome.Unknown([.. missing]);
        var points = new YearPoints(context).Of(facts.Years);
        return Outcome.Scored(points, [SoftwareSupportReasons.Shortest(facts, points), .. SoftwareSupportReasons.Counting(facts)]) with { Missing = [.. missing] };
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => SoftwareSupportChanges.Of(context);
}
