namespace FixScore.Pairing.Planning;

/// <summary>Draws all conclusions from flagged sets and from limits on how many are tied.</summary>
static class Reduction
{
    public static Reduced Of(ulong open, ulong[] flags, int least, int most)
    {
        var tied = 0UL;
        while (true)
        {
            flags = Smallest(flags);
            var (must, cannot) = Settled(open, flags, least - tied.Size(), most - tied.Size());
            if ((must | cannot) == 0) break;
            tied |= must;
            open &= ~(must | cannot);
            flags = [.. flags.Where(flag => !flag.Meets(must)).Select(flag => flag & ~cannot)];
        }
        return new(Knowledge.Of(open, flags, least - tied.Size(), most - tied.Size()), tied);
    }

    static ulong[] Smallest(ulong[] flags) => flags.Length == 1 ? flags
        : [.. flags.Distinct().Where(flag => !flags.Any(other => other != flag && other.Within(flag))).Order()];

    static (ulong Must, ulong Cannot) Settled(ulong open, ulong[] flags, int least, int most)
    {
        if (flags.Where(flag => flag.Size() == 1).Aggregate(0UL, (set, flag) => set | flag) is not 0 and var alone) return (alone, 0);
        if (least >= open.Size()) return (open, 0);
        return most >= open.Size() ? (0, 0)
            : (open.Members().Where(each => !Hitting.IsPossible(Without(flags, each), most)).Union(),
                open.Members().Where(each => !Hitting.IsPossible([.. flags.Where(flag => !flag.Meets(Masks.Bit(each)))], most - 1)).Union());
    }

    static ulong[] Without(ulong[] flags, int each) => [.. flags.Select(flag => flag & ~Masks.Bit(each))];
}

/// <summary>Whether few candidates can meet all flagged sets.</summary>
static class Hitting
{
    public static bool IsPossible(ulong[] flags, int most)
    {
        if (most < 0) return false;
        if (flags.Length == 0) return true;
        if (most == 0) return false;
        foreach (var each in flags.MinBy(flag => flag.Size()).Members())
            if (IsPossible([.. flags.Where(flag => !flag.Meets(Masks.Bit(each)))], most - 1)) return true;
        return false;
    }
}
