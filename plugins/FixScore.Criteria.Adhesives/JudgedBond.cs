using System.Collections.Immutable;

namespace FixScore.Criteria.Adhesives;

/// <summary>A bond with its points.</summary>
/// <param name="Bond">The bond.</param>
/// <param name="Points">The points that count.</param>
/// <param name="Means">Points by means, and the acts that decide them.</param>
/// <param name="ByForce">Whether a measured force decided instead.</param>
sealed record JudgedBond(Bond Bond, Interval Points, JudgedEffort Means, bool ByForce)
{
    public static JudgedBond Of(PartContext context, Bond bond)
    {
        var means = new EffortPoints(context).Of(bond.Effort);
        var decides = context.Get(AdhesiveStrengthOptions.Force) == ForceUse.Decides && !bond.Effort.OnlyDamage;
        return decides && PointsOfForce(context, bond) is { } force ? new(bond, force, means, true) : new(bond, means.Points, means, false);
    }

    static Interval? PointsOfForce(PartContext context, Bond bond)
    {
        ImmutableArray<Interval?> forces = [bond.PeelN, bond.ShearN];
        return Interval.HullOf(forces.OfType<Interval>().Select(force => context.Points(AdhesiveStrengthOptions.ForceBands, force)));
    }
}
