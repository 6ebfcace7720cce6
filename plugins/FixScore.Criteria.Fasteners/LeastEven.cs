using System.Collections.Immutable;

namespace FixScore.Criteria.Fasteners;

/// <summary>The low end of <see cref="EffectiveTypes"/>: the lowest corner of the box of counts, all that may be alike taken as alike.</summary>
static class LeastEven
{
    public static decimal Of(ImmutableArray<ScrewType> types)
    {
        if (types.Any(type => type.Most is null)) return 1;
        var free = types.Count(type => type.Least < type.Most);
        if (free > 30 || (long)types.Length * types.Length << free > EffectiveTypes.MostWork) return 1;
        var alike = Alike(types);
        var lowest = (decimal)types.Length;
        for (var corner = 0; corner < 1 << free; corner++) lowest = Math.Min(lowest, At(Corner(types, corner), alike));
        return Math.Max(1, lowest);
    }

    /// <summary>Pairs of different types that may be one.</summary>
    static ImmutableArray<(int, int)> Alike(ImmutableArray<ScrewType> types) =>
    [
        .. from i in Enumerable.Range(0, types.Length)
           from j in Enumerable.Range(0, i)
           where types[i].MayEqual(types[j])
           select (i, j),
    ];

    static decimal[] Corner(ImmutableArray<ScrewType> types, int corner)
    {
        var counts = new decimal[types.Length];
        for (var i = 0; i < counts.Length; i++)
        {
            counts[i] = types[i].Least;
            if (types[i].Least == types[i].Most) continue;
            if ((corner & 1) == 1) counts[i] = types[i].Most!.Value;
            corner >>= 1;
        }
        return counts;
    }

    static decimal At(decimal[] counts, ImmutableArray<(int, int)> alike)
    {
        var (sum, squares) = (0m, 0m);
        foreach (var count in counts) (sum, squares) = (sum + count, squares + count * count);
        foreach (var (i, j) in alike) squares += 2 * counts[i] * counts[j];
        return squares == 0 ? counts.Length : sum * sum / squares;
    }
}
