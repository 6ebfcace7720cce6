using System.Collections.Immutable;
using FixScore.Disassembly.Model;

namespace FixScore.Disassembly.Search;

/// <summary>The fewest steps that what is certainly still to be done can take, in whatever order.</summary>
/// <remarks>
/// Leaving an operation out of a way never makes the rest cost more, so what must be done, ordered at best, bounds every way.
/// Each removal ends a step of its own; heating and cleaning are steps of their own. What only prepares can share the step of
/// a removal that uses the same tools, or no tools; each other set of tools (none a part of another) is one change more.
/// </remarks>
sealed class StepBound
{
    // Beyond that many sets of tools changes are not counted; the bound stays one.
    const int MostSets = 256;
    const byte Prepares = 1, Removes = 2;

    readonly Item[] items;
    readonly ToolSets tools;
    readonly bool firstCounts;
    readonly bool[][] within;

    public StepBound(ImmutableArray<Work> works, ToolSets tools, Landmarks landmarks, bool firstCounts)
    {
        (this.tools, this.firstCounts) = (tools, firstCounts);
        items = [.. landmarks.All.Select(by => Item.Of(by, works, tools))];
        within = [.. Enumerable.Range(0, tools.Count).Select(small => Enumerable.Range(0, tools.Count).Select(large => small != large && tools.New(large, small) == 0).ToArray())];
    }

    public int From(ReadOnlySpan<ulong> done, int hand, bool open)
    {
        Span<byte> uses = stackalloc byte[tools.Count <= MostSets ? tools.Count : 0];
        var (heat, removals, hosts, prepares, ready) = (0, 0, 0, false, hand == 0 && !firstCounts);
        foreach (var item in items)
        {
            if (Masks.Meet(item.By, done)) continue;
            if (item.IsHeat) heat += item.Least;
            else
            {
                removals += item.Removes ? 1 : 0;
                hosts += item.Removes && item.Set <= 0 ? 1 : 0;
                prepares |= !item.Removes;
                if (item.Set > 0 && item.Set < uses.Length) uses[item.Set] |= item.Removes ? Removes : Prepares;
                ready |= item.Set <= 0 || tools.New(hand, item.Set) == 0;
            }
        }
        if (removals == 0 && !prepares) return heat;
        var alone = Alone(uses);
        var rest = removals > 0 ? removals + Math.Max(0, alone - hosts) : Math.Max(1, alone);
        return heat + rest - (open && ready ? 1 : 0);
    }

    // Sets of tools that only prepare, and that no other set in use makes free.
    int Alone(ReadOnlySpan<byte> uses)
    {
        var alone = 0;
        for (var set = 1; set < uses.Length; set++)
            if (uses[set] == Prepares && !IsFree(set, uses)) alone++;
        return alone;
    }

    bool IsFree(int set, ReadOnlySpan<byte> uses)
    {
        for (var other = 1; other < uses.Length; other++)
            if ((uses[other] != 0 && within[set][other]) || ((uses[other] & Removes) != 0 && within[other][set])) return true;
        return false;
    }

    /// <summary>One of these operations must be done; what is the same for all of them.</summary>
    /// <param name="By">The operations.</param>
    /// <param name="IsHeat">Whether it is heating or cleaning, whichever is done.</param>
    /// <param name="Removes">Whether it ends a step, whichever is done.</param>
    /// <param name="Set">The set of tools; 0 for bare hands, -1 when it can be one of several.</param>
    /// <param name="Least">The fewest steps it takes when it must begin one.</param>
    readonly record struct Item(ulong[] By, bool IsHeat, bool Removes, int Set, int Least)
    {
        public static Item Of(ulong[] by, ImmutableArray<Work> works, ToolSets tools)
        {
            int[] members = [.. Enumerable.Range(0, works.Length).Where(each => Masks.Has(by, each))];
            int[] sets = [.. members.SelectMany(each => tools.Of[each]).Distinct()];
            return new(
                by, members.All(each => works[each].IsHeatOrCleaning || works[each].Options.All(option => option.Heats)),
                members.All(each => works[each].Takes || works[each].IsHeatOrCleaning || works[each].Options.All(option => option.Heats)),
                sets is [var only] ? only : -1,
                sets.Min(set => Math.Max(1, tools.Size(set))));
        }
    }
}
