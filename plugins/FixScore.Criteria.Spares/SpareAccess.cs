using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>Who can buy a spare, fewest first. The maker's own network is nobody here.</summary>
enum SpareAccess
{
    Nobody,
    Professionals,
    Everyone,
}

/// <summary>All that is possible of who can buy.</summary>
/// <param name="Worst">The fewest it can be.</param>
/// <param name="Best">The most it can be.</param>
readonly record struct AccessRange(SpareAccess Worst, SpareAccess Best)
{
    public static AccessRange Any => new(SpareAccess.Nobody, SpareAccess.Everyone);

    public static AccessRange Exactly(SpareAccess access) => new(access, access);

    public bool IsExact => Worst == Best;

    /// <summary>Who can buy a spare.</summary>
    public static AccessRange Of(Spare spare)
    {
        var possible = spare.Audience.Possible().Select(AccessOf);
        return new(possible.Min(), possible.Max());
    }

    /// <summary>Who can buy a spare for a part.</summary>
    public static AccessRange Of(PartSpares spares)
    {
        if (spares.IsNone) return Exactly(SpareAccess.Nobody);
        if (spares.IsUnknown) return Any;
        return new(spares.Listed.Max(spare => Of(spare).Worst), spares.Listed.Concat(spares.Possible).Max(spare => Of(spare).Best));
    }

    static SpareAccess AccessOf(Audience audience) => audience switch
    {
        Audience.Public => SpareAccess.Everyone,
        Audience.Repairers => SpareAccess.Professionals,
        _ => SpareAccess.Nobody,
    };
}
