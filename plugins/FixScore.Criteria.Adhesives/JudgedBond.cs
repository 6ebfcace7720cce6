using System.Collections.Immutable;

namespace FixScore.Criteria.Adhesives;

/// <summary>A bond with its points.</summary>
/// <param name="Bond">The bond.</param>
/// <param name="Points">The points that count.</param>
/// <param name="Means">Points by means, and the acts that decide them.</param>
/// <param name="ByForce">Whether a measured force decided within the tolerance.</param>
sealed record JudgedBond(Bond Bond, Interval Points, JudgedEffort Means, bool ByForce)
{
    public static JudgedBond Of(CriterionContext context, Bond bond)
    {
        var means = new EffortPoints(context).Of(bond.Effort);
        if (bond.Effort.OnlyDamage) return new(bond, means.Points, means, false);
        var tolerance = context.Get(AdhesiveStrengthOptions.Tolerance) * (context.Scale.Max - context.Scale.Min);
        var force = tolerance > 0 ? PointsOfForce(context, bond) : null;
        return new(bond, Within(context.Scale, means.Points, tolerance, force ?? context.Scale.Whole), means, force is not null);
    }

    // A bond whose type is not known may be loaded either way, so that both count; one not measured can be anything.
    static Interval? PointsOfForce(CriterionContext context, Bond bond)
    {
        ImmutableArray<Interval?> forces = [.. bond.Loading.Select(loading => loading == Loading.Peel ? bond.PeelN : bond.ShearN)];
        if (forces.All(force => force is null)) return null;
        return Interval.HullOf(forces.Select(force => force is { } known ? context.Points(AdhesiveStrengthOptions.ForceBands, known) : context.Scale.Whole));
    }

    // Each end of what is assumed draws in the same end of what was measured, so that a vaguer assumption never narrows the result.
    static Interval Within(Scale scale, Interval assumed, decimal tolerance, Interval force) =>
        new(Near(scale, assumed.Low, tolerance, force.Low), Near(scale, assumed.High, tolerance, force.High));

    static decimal Near(Scale scale, decimal assumed, decimal tolerance, decimal force) =>
        Math.Clamp(force, Math.Max(scale.Min, assumed - tolerance), Math.Min(scale.Max, assumed + tolerance));
}
