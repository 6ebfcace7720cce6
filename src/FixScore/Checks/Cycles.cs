namespace FixScore.Checks;

/// <summary>Finds what leads back to itself. Takes time in proportion to what there is, without recursion: chains can be long.</summary>
sealed class Cycles
{
    readonly Dictionary<string, string[]> next;
    readonly HashSet<string> seen = new(StringComparer.Ordinal);
    readonly Dictionary<string, int> depth = new(StringComparer.Ordinal);
    readonly List<Step> path = [];

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
            var step = path[^1];
            if (step.Tried == next[step.Id].Length)
            {
                depth.Remove(step.Id);
                path.RemoveAt(path.Count - 1);
                continue;
            }
            path[^1] = step with { Tried = step.Tried + 1 };
            var to = next[step.Id][step.Tried];
            if (depth.TryGetValue(to, out var at) && step.Told < at) yield return Tell(at);
            Enter(to);
        }
    }

    void Enter(string id)
    {
        if (!next.ContainsKey(id) || !seen.Add(id)) return;
        depth.Add(id, path.Count);
        path.Add(new(id, 0, path.Count == 0 ? -1 : path[^1].Told));
    }

    string[] Tell(int from)
    {
        for (var i = from; i < path.Count; i++) path[i] = path[i] with { Told = i };
        return [.. path.Skip(from).Select(step => step.Id)];
    }

    static string[] Turned(string[] cycle, Dictionary<string, int> order)
    {
        var first = Array.IndexOf(cycle, cycle.MinBy(id => order[id]));
        return [.. cycle[first..], .. cycle[..first]];
    }

    /// <summary>A step of the way that is being tried.</summary>
    /// <param name="Id">What it is at.</param>
    /// <param name="Tried">How many of the ways on were tried.</param>
    /// <param name="Told">Depth of the last step up to here that is in a cycle already told; -1 for none.</param>
    readonly record struct Step(string Id, int Tried, int Told);
}
