using System.Collections.Immutable;
using FixScore.Disassembly.Model;

namespace FixScore.Disassembly.Search;

/// <summary>Steps: each ends with the removal of a part or with a change of tool.</summary>
/// <remarks>
/// Source: Regulation (EU) 2023/1669 Annex I (20) and Annex IV point 5. The bench is what is in hand (a number of
/// <see cref="ToolSets"/>) and whether a step is open.
/// <para>The first operation of a step takes up its tool without a change. So where bare hands must come first and a tool
/// later in the same step, other work with that tool can be worth doing first, although nothing needs it: it costs the step
/// that bare hands would have begun and saves the change. This is what the words of the law give, and the search looks for it.</para>
/// </remarks>
sealed class StepPrice : Price
{
    readonly ImmutableArray<Work> works;
    readonly ToolSets tools;
    readonly bool firstCounts;
    readonly StepBound? bound;
    readonly int[] kinds;
    bool[]? paired;

    public StepPrice(ImmutableArray<Work> works, Landmarks? landmarks, FirstTool firstTool, UnknownTools unknown)
    {
        (this.works, firstCounts, tools) = (works, firstTool == FirstTool.Change, new(works, unknown));
        kinds = KindsOf(works, tools);
        bound = landmarks is null ? null : new(works, tools, landmarks, BareMask(), firstCounts);
        Most = tools.Of.Aggregate(Int128.Zero, (sum, options) => sum + options.Max(set => Math.Max(1, tools.Size(set))));
    }

    public override int Start => 0;

    public override Int128 Most { get; }

    public override int Options(int operation) => works[operation].Options.Length;

    public override (Int128 Cost, int Bench) Of(int bench, int operation, int option)
    {
        var (work, set, hand, open) = (works[operation], tools.Of[operation][option], bench >> 1, (bench & 1) != 0);
        var heat = work.IsHeatOrCleaning || work.Options[option].Heats;
        var after = ((set == 0 ? hand : set) << 1) | (work.Takes || heat ? 0 : 1);
        return (open && !heat ? Change(hand, set) : Math.Max(1, tools.Size(set)), after);
    }

    public override bool IsBestNow(int bench, int operation, Reach reach, out int option)
    {
        for (option = 0; option < tools.Of[operation].Length; option++)
            if (IsOpen(bench) && !(Array.TrueForAll(tools.Of[operation], set => set == 0) ? reach.Paired > 0 : reach.Bare > 0) && Of(bench, operation, option) == (0, bench)) return true;
        option = 0;
        return !IsOpen(bench) && reach.Bare == 0 && reach.Paired == 0 && IsAlone(operation, reach.Helpful);
    }

    // With a closed step and nothing to begin with bare hands, what is in hand makes no difference.
    public override int Settled(int bench, Reach reach) => IsOpen(bench) || reach.Bare > 0 || reach.Paired > 0 ? bench : Start;

    public override int Kind(int operation) => kinds[operation];

    public override bool IsByHand(int operation) => Array.IndexOf(tools.Of[operation], 0) >= 0;

    public override bool IsBare(int operation) => LeavesOpen(operation) && IsByHand(operation);

    // Several tools at once each cost a step where none is open, but not where bare hands opened it and they are in hand
    // still, from another operation that used two of them.
    public override bool IsPaired(int operation) => (paired ??= [.. tools.Of.Select((sets, work) => sets.Any(set => tools.HasPartner(set, work)))])[operation];

    public override bool MayOpen(int operation, Reach reach)
    {
        if (!LeavesOpen(operation)) return false;
        if (reach.Paired > 0 && IsBare(operation)) return true;
        for (var work = Masks.Next(reach.Helpful, 0); work >= 0 && reach.Bare > 0; work = Masks.Next(reach.Helpful, work + 1))
            if (Array.Exists(tools.Of[operation], set => Array.Exists(tools.Of[work], other => tools.Shared(set, other) > 0))) return true;
        return false;
    }

    public override bool OpensNow(int bench, int operation, int option, Reach reach) =>
        !IsOpen(bench) && (tools.Of[operation][option] == 0 ? reach.Paired > 0 && tools.Size(bench >> 1) > 1 : reach.IsBareReady);

    static bool IsOpen(int bench) => (bench & 1) != 0;

    public override Int128 Least(ReadOnlySpan<ulong> done, int bench) => bound?.From(done, bench >> 1, (bench & 1) != 0) ?? 0;

    // A removal that shares its step with nothing that is still to come takes a step of its own whenever it is done.
    bool IsAlone(int operation, ReadOnlySpan<ulong> helpful)
    {
        if (!works[operation].Takes || tools.Of[operation] is not [var set]) return false;
        for (var work = Masks.Next(helpful, 0); work >= 0; work = Masks.Next(helpful, work + 1))
            if (!works[work].Takes && (set == 0 || Array.Exists(tools.Of[work], other => tools.Shared(set, other) > 0))) return false;
        return true;
    }

    ulong[] BareMask()
    {
        var mask = new ulong[Math.Max(1, (works.Length + 63) / 64)];
        for (var work = 0; work < works.Length; work++)
            if (IsBare(work)) Masks.Add(mask, work);
        return mask;
    }

    static int[] KindsOf(ImmutableArray<Work> works, ToolSets tools)
    {
        var kinds = works.Select((work, index) => $"{work.Takes} {work.IsHeatOrCleaning} {string.Join(' ', tools.Of[index].Zip(work.Options, (set, option) => $"{set}{(option.Heats ? "h" : "")}"))}").ToArray();
        return [.. kinds.Select(kind => Array.IndexOf(kinds, kind))];
    }

    bool LeavesOpen(int operation) => !works[operation].Takes && !works[operation].IsHeatOrCleaning;

    // A tool taken up while nothing is in hand changes none, unless the reading says so.
    int Change(int hand, int set) => hand == 0 && !firstCounts ? Math.Max(0, tools.Size(set) - 1) : tools.New(hand, set);
}
