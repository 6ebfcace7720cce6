namespace FixScore.Checks;

/// <summary>Finds what leads back to itself. Takes time in proportion to what there is, without recursion: chains can be long.</summary>
sealed class Cycles
{
    readonly Dictionary<string, string[]> next;
    readonly HashSet<string> seen = new(StringComparer.Ordinal);
    readonly HashSet<string> told = new(StringComparer.Ordinal);
    readonly Dictionary<string, int> depth = new(StringComparer.Ordinal);
    readonly List<(string Id, int Tried)> path = [];

    Cycles(Dictionary<string, string[]> next) => this.next = next;

    /// <summary>Cycles that share nothing; each begins with what stands first.</summary>
    /// <param name="next">What each leads to, in the order in which cycles are to be told.</param>
    public static IEnumerable<string[]> Of(IEnumerable<KeyValuePair<string, string[]>> next)
    {
        var rank = next.DistinctBy(pair => pair.Key, StringComparer.Ordinal).Select((pair, index) => (pair, index)).ToArray();
        var search = new Cycles(rank.ToDictionary(each => each.pair.Key, each => each.pair.Value, StringComparer.Ordinal));
        var order = rank.ToDictionary(each => each.pair.Key, each => each.index, StringComparer.Ordinal);
        return rank.SelectMany(each => search.From(each.pair.Key)).Select(cycle => Turned(cycle, order));
    }

    IEnumerable<string[]> From(string start)
    {
        Enter(start);
        while (path.Count > 0)
        {
            var (id, tried) = path[^1];
            if (tried == next[id].Length)
            {
                depth.Remove(id);
                path.RemoveAt(path.Count - 1);
                continue;
            }
            path[^1] = (id, tried + 1);
            var to = next[id][tried];
            if (depth.TryGetValue(to, out var at) && IsNew(at)) yield return [.. path.Skip(at).Select(step => step.Id)];
            Enter(to);
        }
    }

    void Enter(string id)
    {
        if (!next.ContainsKey(id) || !seen.Add(id)) return;
        depth.Add(id, path.Count);
        path.Add((id, 0));
    }

    bool IsNew(int from)
    {
        for (var i = path.Count - 1; i >= from; i--)
            if (told.Contains(path[i].Id)) return false;
        foreach (var (id, _) in path.Skip(from)) told.Add(id);
        return true;
    }

    static string[] Turned(string[] cycle, Dictionary<string, int> order)
    {
        var first = Array.IndexOf(cycle, cycle.MinBy(id => order[id]));
        return [.. cycle[first..], .. cycle[..first]];
    }
}
