using System.Collections.Immutable;
using FixScore.Disassembly.Model;

namespace FixScore.Disassembly.Search;

/// <summary>One question to the search: only operations that can help, renumbered in the order of the record.</summary>
/// <remarks>Needs are rows, each made of rows before it; a row is a fact (some operation of a mask was done), "all" or "any".</remarks>
sealed class Plan
{
    readonly ulong[][] facts;
    readonly int[][] parts;
    readonly bool[] isAll;

    Plan(Teardown teardown, ImmutableArray<int> kept, Need goal)
    {
        Works = [.. kept.Select(index => teardown.Works[index])];
        Original = kept;
        Stride = Math.Max(1, (kept.Length + 63) / 64);
        var number = Enumerable.Repeat(-1, teardown.Works.Length).ToArray();
        for (var i = 0; i < kept.Length; i++) number[kept[i]] = i;
        var table = new NeedTable(Works.Select(work => work.Needs).Append(goal));
        facts = [.. table.Rows.Select(row => row.Fact is { } fact ? Mask(fact.By.Select(each => number[each])) : [])];
        (parts, isAll) = ([.. table.Rows.Select(row => row.Of)], [.. table.Rows.Select(row => row.IsAll)]);
        (NeedOf, Goal) = ([.. Works.Select(work => table[work.Needs])], table[goal]);
        Before = [.. Works.Select(work => work.DirectlyAfter is { } before ? number[before] : -1)];
        Followers = [.. Works.Select((_, index) => Mask(Enumerable.Range(0, Works.Length).Where(each => Before[each] == index)))];
    }

    /// <summary>The operations, in the order of the record.</summary>
    public ImmutableArray<Work> Works { get; }

    /// <summary>Their numbers among all operations.</summary>
    public ImmutableArray<int> Original { get; }

    /// <summary>Words of a mask over the operations.</summary>
    public int Stride { get; }

    /// <summary>Row of what each operation needs.</summary>
    public int[] NeedOf { get; }

    /// <summary>Row of the goal.</summary>
    public int Goal { get; }

    /// <summary>The operation that must come directly before each; -1 for none.</summary>
    public int[] Before { get; }

    /// <summary>Whether something must come directly after each.</summary>
    public bool[] HasFollowers => field ??= [.. Followers.Select(mask => Masks.Next(mask, 0) >= 0)];

    /// <summary>Operations that can need each.</summary>
    public ulong[][] Dependents => field ??= FindDependents();

    /// <summary>Operations that must come directly after each.</summary>
    public ulong[][] Followers { get; }

    public int Rows => facts.Length;

    public ReadOnlySpan<ulong> Fact(int row) => facts[row];

    public bool IsFact(int row) => facts[row].Length > 0;

    public bool IsAll(int row) => isAll[row];

    public ReadOnlySpan<int> Parts(int row) => parts[row];

    /// <summary>The question how to reach a goal with what is possible; <c>null</c> when it cannot be reached with that.</summary>
    /// <param name="teardown">The record as work.</param>
    /// <param name="goal">What to reach.</param>
    /// <param name="possible">What can be done at all.</param>
    /// <param name="idle">Whether operations that nothing needs can help, too.</param>
    public static Plan? For(Teardown teardown, Need goal, Bits possible, bool idle) =>
        !teardown.Holds(goal, possible) ? null : new(teardown, [.. (idle ? possible : Helpful(teardown, goal, possible)).All()], goal);

    /// <summary>Which rows hold when these operations were done.</summary>
    public void Hold(ReadOnlySpan<ulong> done, Span<bool> holds)
    {
        for (var row = 0; row < facts.Length; row++)
            holds[row] = facts[row].Length > 0 ? Masks.Meet(facts[row], done) : isAll[row] ? AllOf(parts[row], holds) : AnyOf(parts[row], holds);
    }

    // What the goal names, and what that needs, and so on.
    static Bits Helpful(Teardown teardown, Need goal, Bits possible)
    {
        var helpful = new Bits(possible.Size);
        var (seen, open) = (new HashSet<Need>(ReferenceEqualityComparer.Instance), new Stack<Need>([goal]));
        while (open.TryPop(out var next))
        {
            if (!seen.Add(next)) continue;
            foreach (var part in next is Need.All all ? all.Of : next is Need.Any any ? any.Of : []) open.Push(part);
            foreach (var work in next is Need.Fact fact ? fact.By.Where(possible.Has).Where(helpful.Add) : []) Ask(work);
        }
        return helpful;

        void Ask(int work)
        {
            open.Push(teardown.Works[work].Needs);
            if (teardown.Works[work].DirectlyAfter is { } before && helpful.Add(before)) Ask(before);
        }
    }

    // Rows stand after what they are made of, so one pass from the end tells which operations a row serves.
    ulong[][] FindDependents()
    {
        var serves = Enumerable.Range(0, Rows).Select(_ => new ulong[Stride]).ToArray();
        for (var work = 0; work < Works.Length; work++) Masks.Add(serves[NeedOf[work]], work);
        for (var row = Rows - 1; row >= 0; row--)
            foreach (var part in parts[row])
                for (var word = 0; word < Stride; word++) serves[part][word] |= serves[row][word];
        return [.. Works.Select((_, work) => Enumerable.Range(0, Rows).Where(row => IsFact(row) && Masks.Has(facts[row], work))
            .Aggregate(new ulong[Stride], (all, row) => [.. all.Zip(serves[row], (one, other) => one | other)]))];
    }

    ulong[] Mask(IEnumerable<int> members)
    {
        var mask = new ulong[Stride];
        foreach (var member in members.Where(member => member >= 0)) Masks.Add(mask, member);
        return mask;
    }

    static bool AllOf(int[] parts, Span<bool> holds)
    {
        foreach (var part in parts)
            if (!holds[part]) return false;
        return true;
    }

    static bool AnyOf(int[] parts, Span<bool> holds)
    {
        foreach (var part in parts)
            if (holds[part]) return true;
        return false;
    }
}
