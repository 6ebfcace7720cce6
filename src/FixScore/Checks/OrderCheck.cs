using FixScore.Records;

namespace FixScore.Checks;

/// <summary>Operations that wait for themselves: a cycle in which each certainly needs the next.</summary>
static class OrderCheck
{
    public static IEnumerable<Problem> Check(CheckedRecord record)
    {
        var needs = new Needs(record);
        var open = Cyclic(record.Record.Operations.DistinctBy(operation => operation.Id).ToDictionary(o => o.Id, needs.Of, StringComparer.Ordinal));
        foreach (var operation in record.Record.Operations)
        {
            if (!open.ContainsKey(operation.Id)) continue;
            var cycle = CycleFrom(operation.Id, open);
            foreach (var step in cycle) open.Remove(step);
            if (cycle.Length == 0) continue;
            yield return Problem.Of(Severity.Error, record.At(record.Find<Operation>(cycle[0])!), "operation-waits-for-itself",
                "Operations wait for each other: {cycle}.", "Break the circle; one of them can be done first.",
                ("cycle", string.Join(" needs ", [.. cycle, cycle[0]])));
        }
    }

    // Peels off operations whose needs are all met; what stays needs something in a cycle.
    static Dictionary<string, string[]> Cyclic(Dictionary<string, string[]> needs)
    {
        var waiting = needs.ToDictionary(pair => pair.Key, pair => pair.Value.Count(needs.ContainsKey), StringComparer.Ordinal);
        var neededBy = needs.SelectMany(pair => pair.Value, (pair, need) => (Need: need, By: pair.Key)).ToLookup(pair => pair.Need, pair => pair.By, StringComparer.Ordinal);
        var ready = new Queue<string>(needs.Keys.Where(id => waiting[id] == 0));
        while (ready.TryDequeue(out var id))
        {
            waiting.Remove(id);
            foreach (var by in neededBy[id])
                if (waiting.ContainsKey(by) && --waiting[by] == 0) ready.Enqueue(by);
        }
        return waiting.Keys.ToDictionary(id => id, id => needs[id].Where(waiting.ContainsKey).ToArray(), StringComparer.Ordinal);
    }

    // Walks along needs until an operation comes again; one that leads to a cycle named before gives none.
    static string[] CycleFrom(string start, Dictionary<string, string[]> open)
    {
        var path = new List<string>();
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        for (string? id = start; id is not null; id = open[id].FirstOrDefault(open.ContainsKey))
        {
            if (index.TryGetValue(id, out var at)) return [.. path.Skip(at)];
            index.Add(id, path.Count);
            path.Add(id);
        }
        open.Remove(start);
        return [];
    }
}
