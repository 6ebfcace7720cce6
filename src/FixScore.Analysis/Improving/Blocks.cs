using System.Collections.Immutable;

namespace FixScore.Analysis.Improving;

/// <summary>Groups of candidates that no criterion may notice together, and ways to share a number out among them.</summary>
static class Blocks
{
    /// <summary>The groups, in the order of their first candidates.</summary>
    /// <param name="candidates">How many candidates there are.</param>
    /// <param name="noticed">The candidates that each criterion may notice.</param>
    public static ImmutableArray<UInt128> Of(int candidates, IEnumerable<UInt128> noticed)
    {
        var blocks = Enumerable.Range(0, candidates).Select(Choices.Bit).ToList();
        foreach (var together in noticed.Where(set => set != 0))
        {
            var united = blocks.Where(block => (block & together) != 0).Aggregate((a, b) => a | b);
            blocks.RemoveAll(block => (block & together) != 0);
            blocks.Add(united);
        }
        return [.. blocks.OrderBy(block => UInt128.TrailingZeroCount(block))];
    }

    /// <summary>All ways to take a number of candidates, as how many of each block.</summary>
    public static IEnumerable<ImmutableArray<int>> Shares(ImmutableArray<UInt128> blocks, int number)
    {
        if (blocks.IsEmpty) return number == 0 ? [[]] : [];
        return Enumerable.Range(0, Math.Min(number, Choices.Count(blocks[0])) + 1)
            .SelectMany(first => Shares(blocks[1..], number - first).Select(rest => rest.Insert(0, first)));
    }

    /// <summary>All sets with so many candidates of each block, none excluding another.</summary>
    public static IEnumerable<UInt128> Sets(ImmutableArray<UInt128> blocks, ImmutableArray<int> shares, Choices choices)
    {
        if (blocks.IsEmpty) return [UInt128.Zero];
        return choices.Of(blocks[0], shares[0]).SelectMany(first =>
            Sets(blocks[1..], shares[1..], choices).Where(rest => choices.Agree(first, rest)).Select(rest => first | rest));
    }
}
