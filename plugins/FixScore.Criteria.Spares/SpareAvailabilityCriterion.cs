namespace FixScore.Criteria.Spares;

/// <summary>Who can buy which spare: how far up a ladder of roles everyone can, while professional repairers can buy all.</summary>
/// <remarks>
/// <para>Roles with equal points of option <c>ladder</c> form a rung. The score is the highest rung whose spares, and those of
/// all lower rungs, are sold to everyone, provided that the spares of all roles of the ladder are at least sold to
/// professional repairers. Otherwise, or when the lowest rung is not reached, there is no level and <c>noLevel</c> decides.
/// More is better.</para>
/// <para>Of several parts with one role the worst counts, of several spares for one part the best. A spare of any part of a
/// group counts for the whole group. Roles outside the ladder are ignored. A role that the record says is absent does not
/// hinder, nor does a hinge or protective foil without a part in a phone or tablet whose display does not fold.</para>
/// <para>A role with neither part nor absence, a spare that is not listed in a list with entries, and a spare without known
/// audience may be anything: the score is the hull of the best and the worst case. An empty list says that nothing is sold.
/// Without recorded joints the groups are unknown, so that any spare may serve any part too. A ladder without roles: not
/// applicable.</para>
/// <para>Source: Regulation (EU) 2023/1669 Annex IV point 5, score for spare parts; that a missing spare has no level is our
/// reading. Thread safe.</para>
/// </remarks>
public sealed class SpareAvailabilityCriterion : IDeviceCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "spare-availability", 1, "Spare availability", "rungs of roles whose spares everyone can buy", "rungs",
        Direction.MoreIsBetter, "Regulation (EU) 2023/1669 Annex IV point 5, score for spare parts",
        [
            "device.kind", "device.foldable", "parts[].role", "absent", "joints", "joints[].integral", "spares", "spares[].part",
            "spares[].audience",
        ],
        SpareAvailabilityOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(DeviceContext context)
    {
        var facts = SpareAvailabilityFacts.Of(context.Case, context.Get(SpareAvailabilityOptions.Ladder));
        if (facts.Rungs.IsEmpty) return Outcome.NotApplicable(SpareAvailabilityReasons.NothingAsked());
        if (!context.Case.Record.Spares.IsRecorded) return Outcome.Unknown(new Missing(Pointer.Root, "spares"));
        var points = PointsOf(context, facts.Worst).Hull(PointsOf(context, facts.Best));
        var reasons = new SpareAvailabilityReasons(context.Case);
        return Outcome.Scored(points, [reasons.Reached(facts, points), .. facts.Roles.Select(reasons.Of)]) with
        {
            Missing = [.. facts.Roles.SelectMany(reasons.Missing), .. reasons.MissingJoints(facts)],
        };
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => SpareAvailabilityChanges.Of(context);

    static Interval PointsOf(DeviceContext context, Rung? reached)
    {
        if (reached is not null) return reached.Points;
        return context.Get(Options.NoLevel) == WhenNoLevel.Lowest ? context.Scale.Min : context.Scale.Whole;
    }
}
