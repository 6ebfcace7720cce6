using System.Collections.Immutable;
using FixScore.Disassembly.Model;

namespace FixScore.Disassembly.Search;

/// <summary>The fewest steps that what is certainly still to be done can take, in whatever order.</summary>
/// <remarks>
/// <para>Cut a way into stretches that each end with a removal. Sets of tools none of which is part of another cost a stretch at
/// least the largest of them, and one more for each other: tools only come into hand by being taken up. So each removal costs
/// its tools, one at least; what only prepares is free with a removal by the same tools or, one set of one tool each, with a
/// removal by bare hands; else it is one more. Heating and cleaning are steps of their own.</para>
/// <para>Bare hands that begin a step leave in hand what was, so each such operation may save all tools of a set but one.</para>
/// </remarks>
sealed class StepBound
{
    // Beyond that many sets of tools changes are not counted; the bound stays one.
    const int MostSets = 256;
    const byte Prepares = 1, Removes = 2;

    readonly Item[] items;
    readonly ToolSets tools;
    readonly ulong[] bare;
    readonly bool firstCounts;
    readonly bool[][] within;

    public StepBound(ImmutableArray<Work> works, ToolSets tools, Landmarks landmarks, ulong[] bare, bool firstCounts)
    {
        (this.tools, this.bare, this.firstCounts) = (tools, bare, firstCounts);
        items = [.. landmarks.All.Select(by => Item.Of(by, works, tools))];
        within = [.. Enumerable.Range(0, tools.Count).Select(small => Enumerable.Range(0, tools.Count).Select(large => small != large && tools.New(large, small) == 0).ToArray())];
    }

    public int From(ReadOnlySpan<ulong> done, int hand, bool open)
    {
        Span<byte> uses = stackalloc byte[tools.Count <= MostSets ? tools.Count : 0];
        var (heat, removals, hosts, several, shared, largest, saved, prepares) = (0, 0, 0, 0, 0, 1, 0, false);
        foreach (var item in items)
        {
            if (Masks.Meet(item.By, done)) continue;
            if (item.IsHeat)
            {
                heat += item.Least;
                continue;
            }
            if (item.Set > 0 && item.Set < uses.Length) uses[item.Set] |= item.Removes ? Removes : Prepares;
            if (item.HasPartner) largest = Math.Max(largest, tools.Size(item.Set));
            saved = Math.Max(saved, Saved(item.Set, hand));
            prepares |= !item.Removes;
            if (!item.Removes) continue;
            removals++;
            hosts += item.Set <= 0 ? 1 : 0;
            if (item.HasPartner) shared += tools.Size(item.Set) - 1;
            else several += item.Set > 0 ? tools.Size(item.Set) - 1 : 0;
        }
        if (removals == 0 && !prepares) return heat;
        var (single, more) = Alone(uses);
        var rest = removals == 0 ? Math.Max(1, single + more) : removals + Math.Max(0, single - hosts) + several + Math.Max(0, shared + more - (largest - 1) * BareLeft(done, largest));
        return heat + Math.Max(0, rest - (open ? saved : 0));
    }

    // What an open step and the tools in hand can save the next operation.
    int Saved(int set, int hand) =>
        set == 0 || (hand == 0 && !firstCounts) ? Math.Max(1, tools.Size(hand)) : set < 0 ? Math.Max(1, tools.Size(hand)) : tools.Size(set) - tools.New(hand, set);

    int BareLeft(ReadOnlySpan<ulong> done, int largest)
    {
        var left = 0;
        for (var word = 0; largest > 1 && word < done.Length; word++) left += System.Numerics.BitOperations.PopCount(bare[word] & ~done[word]);
        return left;
    }

    // Sets of tools that only prepare, and that no other set in use makes free: those of one tool and the others.
    (int Single, int More) Alone(ReadOnlySpan<byte> uses)
    {
        var (single, more) = (0, 0);
        for (var set = 1; set < uses.Length; set++)
        {
            if (uses[set] != Prepares || IsFree(set, uses)) continue;
            if (tools.Size(set) == 1) single++;
            else more++;
        }
        return (single, more);
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
    /// <param name="HasPartner">Whether another operation can leave two of its tools in hand.</param>
    readonly record struct Item(ulong[] By, bool IsHeat, bool Removes, int Set, int Least, bool HasPartner)
    {
        public static Item Of(ulong[] by, ImmutableArray<Work> works, ToolSets tools)
        {
            int[] members = [.. Enumerable.Range(0, works.Length).Where(each => Masks.Has(by, each))];
            int[] sets = [.. members.SelectMany(each => tools.Of[each]).Distinct()];
            return new(
                by, members.All(each => works[each].IsHeatOrCleaning || works[each].Options.All(option => option.Heats)),
                members.All(each => works[each].Takes || works[each].IsHeatOrCleaning || works[each].Options.All(option => option.Heats)),
                sets is [var only] ? only : -1,
                sets.Min(set => Math.Max(1, tools.Size(set))),
                sets is [> 0 and var own] && tools.HasPartner(own, members[0]));
        }
    }
}
