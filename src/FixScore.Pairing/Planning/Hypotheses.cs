namespace FixScore.Pairing.Planning;

/// <summary>Lists the sets of tied candidates that are still possible.</summary>
static class Hypotheses
{
    /// <summary>All of them, as far as they are no more than <paramref name="most"/>; else <c>null</c>.</summary>
    public static List<ulong>? Of(Knowledge knowledge, int most)
    {
        var (found, members) = (new List<ulong>(), knowledge.Open.Members().ToArray());
        return Add(0, 0) ? found : null;

        bool Add(int from, ulong tied)
        {
            if (tied.Size() >= knowledge.Least && knowledge.Flags.All(flag => flag.Meets(tied))) found.Add(tied);
            if (found.Count > most) return false;
            if (tied.Size() == knowledge.Most) return true;
            for (var next = from; next < members.Length; next++)
                if (!Add(next + 1, tied | Masks.Bit(members[next]))) return false;
            return true;
        }
    }
}
