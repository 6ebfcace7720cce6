using System.Collections.Immutable;

namespace FixScore.Criteria.Spares;

/// <summary>Roles that stand equally high on the ladder.</summary>
/// <param name="Points">How high: its points.</param>
/// <param name="Roles">The roles, in the order of the profile.</param>
sealed record Rung(decimal Points, ImmutableArray<RoleSpares> Roles);

/// <summary>Who can buy the spares of a device, rung by rung.</summary>
/// <param name="Rungs">The rungs, lowest first.</param>
sealed record SpareAvailabilityFacts(ImmutableArray<Rung> Rungs)
{
    public IEnumerable<RoleSpares> Roles => Rungs.SelectMany(rung => rung.Roles);

    /// <summary>The rung surely reached; <c>null</c> for no level.</summary>
    public Rung? Worst => Reached(role => role.Access.Worst);

    /// <summary>The rung reached at best; <c>null</c> for no level.</summary>
    public Rung? Best => Reached(role => role.Access.Best);

    public static SpareAvailabilityFacts Of(TeardownCase source, Levels ladder) => new(
        [
            .. ladder.Entries.GroupBy(level => level.Points).OrderBy(rung => rung.Key)
                .Select(rung => new Rung(rung.Key, [.. rung.Select(level => RoleSpares.Of(source, level.Word))])),
        ]);

    Rung? Reached(Func<RoleSpares, SpareAccess> access) => Roles.Any(role => access(role) == SpareAccess.Nobody)
        ? null
        : Rungs.TakeWhile(rung => rung.Roles.All(role => access(role) == SpareAccess.Everyone)).LastOrDefault();
}
