using System.Collections.Immutable;

namespace FixScore.Criteria.Fasteners;

/// <summary>The high end of <see cref="EffectiveTypes"/>: counts as even as their ranges allow.</summary>
static class MostEven
{
    public static decimal Of(ImmutableArray<ScrewType> types)
    {
        decimal[] levels = [.. types.SelectMany(type => new[] { type.Least, type.Most ?? type.Least }).Distinct().Order()];
        var best = 1m;
        for (var i = 0; i < levels.Length; i++)
        {
            decimal? next = i + 1 < levels.Length ? levels[i + 1] : null;
            best = Math.Max(best, Math.Max(At(types, levels[i]), Peak(types, levels[i], next)));
        }
        return best;
    }

    static decimal At(ImmutableArray<ScrewType> types, decimal level)
    {
        var (sum, squares) = (0m, 0m);
        foreach (var type in types)
        {
            var count = Math.Max(type.Least, Math.Min(level, type.Most ?? level));
            (sum, squares) = (sum + count, squares + count * count);
        }
        return squares == 0 ? 0 : sum * sum / squares;
    }

    /// <summary>The peak between two neighbouring levels; 0 when there is none.</summary>
    static decimal Peak(ImmutableArray<ScrewType> types, decimal level, decimal? next)
    {
        var (floating, sum, squares) = (0, 0m, 0m);
        foreach (var type in types)
        {
            var held = type.Least > level ? type.Least : type.Most <= level ? type.Most : null;
            if (held is { } count) (sum, squares) = (sum + count, squares + count * count);
            else floating++;
        }
        if (floating == 0) return 0;
        if (squares == 0) return floating;
        return squares < level * sum || squares > next * sum ? 0 : floating + sum * sum / squares;
    }
}
