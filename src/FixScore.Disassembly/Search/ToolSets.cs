using System.Collections.Immutable;
using FixScore.Disassembly.Model;

namespace FixScore.Disassembly.Search;

/// <summary>How tools that nobody recorded are taken.</summary>
enum UnknownTools
{
    /// <summary>As bare hands: the fewest steps.</summary>
    BareHands,

    /// <summary>As one tool that no other operation uses: the most steps.</summary>
    OwnTool,
}

/// <summary>The sets of tools that operations use, by number; 0 is nothing.</summary>
sealed class ToolSets
{
    readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal) { [""] = 0 };
    readonly List<string[]> sets = [[]];
    int[,] fresh = new int[1, 1];

    /// <summary>The sets of tools of each operation's options.</summary>
    public ToolSets(ImmutableArray<Work> works, UnknownTools unknown)
    {
        Of = [.. works.Select(work => work.Options.Select(option => Number(option, work, unknown)).ToArray())];
        fresh = new int[sets.Count, sets.Count];
        for (var hand = 0; hand < sets.Count; hand++)
            for (var set = 0; set < sets.Count; set++) fresh[hand, set] = sets[set].Except(sets[hand], StringComparer.Ordinal).Count();
    }

    /// <summary>Numbers of the sets, operation by operation, option by option.</summary>
    public int[][] Of { get; }

    public int Count => sets.Count;

    public int Size(int set) => sets[set].Length;

    /// <summary>How many tools of <paramref name="set"/> are not in hand.</summary>
    public int New(int hand, int set) => fresh[hand, set];

    int Number(ToolOption option, Work work, UnknownTools unknown)
    {
        string[] tools = option.Tools.IsRecorded ? [.. option.Tools.AsArray().Order(StringComparer.Ordinal)]
            : unknown == UnknownTools.BareHands ? [] : [$"?{work.Operation.Id}"];
        var key = string.Join(' ', tools);
        if (!numbers.TryGetValue(key, out var number))
        {
            numbers[key] = number = sets.Count;
            sets.Add(tools);
        }
        return number;
    }
}
