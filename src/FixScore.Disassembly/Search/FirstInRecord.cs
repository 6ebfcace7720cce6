namespace FixScore.Disassembly.Search;

/// <summary>Of all ways that cost the same, the one whose operations stand first in the record.</summary>
/// <remarks>
/// Goes along the way and asks at each operation whether one that stands before it in the record could be done instead at
/// the same cost in all. The ways to choose tools are kept open, since the choice may matter later.
/// </remarks>
static class FirstInRecord
{
    public static int[] Of(Finder finder, Price price, Found found, Allowance allowance)
    {
        var works = found.Moves.Select(Moves.Work).ToArray();
        List<Node> nodes = [finder.Start];
        for (var place = 0; place < works.Length; place++)
        {
            foreach (var earlier in finder.Ready(nodes[0]).TakeWhile(work => work < works[place]))
            {
                if (Rest(finder, Children(finder, price, nodes, earlier, found.Paid), found.Paid, allowance) is not { } rest) continue;
                works = [.. works[..place], earlier, .. rest];
                break;
            }
            nodes = Children(finder, price, nodes, works[place], found.Paid);
        }
        return works;
    }

    // One node for each state of the bench: done and cost in operations are the same for all.
    static List<Node> Children(Finder finder, Price price, List<Node> nodes, int work, Toll limit) =>
        [.. nodes.SelectMany(node => Enumerable.Range(0, price.Options(work)).Select(option => finder.After(node, work, option)))
            .Where(node => !(finder.Promise(node) > limit))
            .GroupBy(node => node.Bench).Select(same => same.MinBy(node => node.Paid))];

    static int[]? Rest(Finder finder, List<Node> nodes, Toll limit, Allowance allowance)
    {
        foreach (var node in nodes)
            if (finder.From(node, limit, allowance).Best is { } best) return [.. best.Moves.Select(Moves.Work)];
        return null;
    }
}
