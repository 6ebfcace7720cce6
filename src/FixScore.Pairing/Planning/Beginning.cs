namespace FixScore.Pairing.Planning;

/// <summary>What a belief holds for certain before the first trial of a plan.</summary>
static class Beginning
{
    /// <exception cref="ArgumentException">No set is possible, or a flagged set names what is no candidate.</exception>
    public static After Of(TieBelief belief)
    {
        var all = Masks.All(belief.Candidates.Length);
        ulong[] flags = [.. belief.Flagged.Select(flag => flag.Select(id => IndexOf(belief, id)).Union())];
        if (belief.AtLeast > belief.AtMost || !Hitting.IsPossible(flags, belief.AtMost))
            throw new ArgumentException("No set of tied parts is possible under this belief.", nameof(belief));
        var reduced = Reduction.Of(all, flags, belief.AtLeast, belief.AtMost);
        return new(reduced.Knowledge, 0, reduced.Tied, all & ~reduced.Knowledge.Open & ~reduced.Tied);
    }

    static int IndexOf(TieBelief belief, string id)
    {
        for (var index = 0; index < belief.Candidates.Length; index++)
            if (belief.Candidates[index].Id == id) return index;
        throw new ArgumentException($"'{id}' is no candidate.", nameof(belief));
    }
}
