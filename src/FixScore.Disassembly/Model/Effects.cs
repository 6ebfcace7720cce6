using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Disassembly.Model;

/// <summary>Which operations, by number and rising, bring about what: joints undone, groups removed by name, gone, away.</summary>
sealed class Effects
{
    readonly Structure structure;
    readonly ILookup<int, int> undone, named, gone, away;

    public Effects(Structure structure, ImmutableArray<Operation> operations)
    {
        this.structure = structure;
        var work = operations.Select((operation, index) => (operation, index)).ToArray();
        named = Lookup(work, each => structure.GroupsOf(each.Removes));
        gone = Lookup(work, each => structure.Along(each.Removes));
        away = Lookup(work, each => structure.Along([.. each.Removes, .. each.Moves]));
        undone = Lookup(work, each => structure.Undone(each).Concat(Parted(structure.Along(each.Removes))).Concat(Parted(structure.Moved(each))));
    }

    public int[] Undoing(int joint) => [.. undone[joint]];

    /// <summary>Operations that name the group in <c>removes</c>.</summary>
    public int[] Naming(int group) => [.. named[group]];

    /// <summary>Operations that take the group out, by name or because it rides along.</summary>
    public int[] Taking(int group) => [.. gone[group]];

    /// <summary>Operations that take the group out or move it.</summary>
    public int[] Shifting(int group) => [.. away[group]];

    // A contact parts by itself when one side goes without the other.
    IEnumerable<int> Parted(int[] going) => structure.Crossing(going).Where(joint => structure.Joints[joint].Kind == JointKind.Contact);

    static ILookup<int, int> Lookup((Operation Operation, int Index)[] work, Func<Operation, IEnumerable<int>> what) =>
        work.SelectMany(each => what(each.Operation).Distinct(), (each, effect) => (effect, each.Index)).ToLookup(pair => pair.effect, pair => pair.Index);
}
