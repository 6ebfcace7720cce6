using System.Collections.Immutable;

namespace FixScore.Criteria.Fasteners;

/// <summary>Bounds of the Hill number of order 2, (sum n)^2 / sum n^2, over all that the observations leave open.</summary>
/// <remarks>
/// <para>High end: two types merged into one never raise the number, so every open type is taken as one of its own. Over
/// ranges of counts the most even filling, n = clip(t, least, most), is best; between two limits the number is
/// k + s1^2/s2 at its peak, where k types float at t and s1, s2 are the sums over the others.</para>
/// <para>Low end: sum n^2 is at most the sum of n*n' over all pairs that may be alike, exact when all types are known.
/// In each single count the quotient first rises, then falls, so a corner of the box of counts is lowest.</para>
/// <para>Both ends only move outwards when an observation is taken away. Work is bounded: past
/// <see cref="MostWork"/> products the low end is 1, past <see cref="MostTypes"/> types or for counts above
/// <see cref="MostScrews"/> the bounds are 1 and the number of types; all of these are right but wider.</para>
/// </remarks>
static class EffectiveTypes
{
    public const int MostTypes = 1_000;
    public const long MostWork = 4_000_000;
    public const decimal MostScrews = 1_000_000;

    public static Interval Of(ImmutableArray<ScrewType> types)
    {
        if (types.Length > MostTypes || types.Any(type => type.Least > MostScrews)) return new(1, types.Length);
        types = [.. types.Select(type => type.Most > MostScrews ? type with { Most = null } : type)];
        var least = LeastEven.Of(types);
        return new(least, Math.Clamp(MostEven.Of(types), least, types.Length));
    }
}
