using System.Collections.Immutable;

namespace FixScore.Pairing.Inference;

/// <summary>A set of trials that clears given parts, found by taking what clears most and then leaving out what is not needed.</summary>
static class GreedyCover
{
    public static ImmutableSortedSet<int> Of(ImmutableSortedSet<int> start, ImmutableArray<string> parts, ImmutableArray<Clearance> clearances)
    {
        var taken = new List<Clearance>();
        for (var open = parts; !open.IsEmpty; open = open.RemoveAll(taken[^1].Clears))
            taken.Add(clearances.MaxBy(clearance => open.Count(clearance.Clears))!);
        foreach (var each in taken.ToArray())
            if (Covers(taken.Where(other => other != each), parts)) taken.Remove(each);
        return start.Union(taken.Select(each => each.Trial)).Union(ControlsFor([.. taken.SelectMany(each => each.Controls)]));
    }

    static List<int> ControlsFor(ImmutableArray<ImmutableArray<int>> faults)
    {
        var controls = faults.Select(showing => showing[0]).Distinct().ToList();
        foreach (var each in controls.ToArray())
            if (faults.All(showing => showing.Any(other => other != each && controls.Contains(other)))) controls.Remove(each);
        return controls;
    }

    static bool Covers(IEnumerable<Clearance> taken, ImmutableArray<string> parts) =>
        parts.All(part => taken.Any(each => each.Clears(part)));
}
