namespace FixScore.Pairing.Planning;

/// <summary>What a belief holds for certain before the first trial of a plan.</summary>
static class Beginning
{
    /// <exception cref="ArgumentException">No set is possible, or a flagged set names what is no candidate.</exception>
    public static After Of(TieBelief belief)
    {
        var all = Masks.All(belief.Candidates.Length);
        var flags = FlagsOf(belief);
        if (!IsPossible(belief))
            throw new ArgumentException("No set of tied parts is possible under this belief.", nameof(belief));
        var reduced = Reduction.Of(all, flags, belief.AtLeast, belief.AtMost);
        return new(reduced.Knowledge, 0, reduced.Tied, all & ~reduced.Knowledge.Open & ~reduced.Tied);
    }

    /// <summary>Whether any set of tied candidates is possible.</summary>
    public static bool IsPossible(TieBelief belief) => belief.AtLeast <= belief.AtMost && Hitting.IsPossible(FlagsOf(belief), belief.AtMost);

    static ulong[] FlagsOf(TieBelief belief) => [.. belief.Flagged.Select(flag => flag.Select(id => IndexOf(belief, id)).Union())];

    static int IndexOf(TieBelief belief, string id)
    {
        for (var index = 0; index < belief.Candidates.Length; index++)
            if (belief.Candidates[index].Id == id) return index;
        throw new ArgumentException($"'{id}' is no candidate.", nameof(belief));
    }
}
