using System.Collections.Frozen;
using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Disassembly.Model;

/// <summary>A record read as work: operations, what each needs, what each brings about. Shared by all routes of a record.</summary>
sealed class Teardown : IFact<Teardown>
{
    readonly ImmutableArray<Need> freed;
    readonly NeedTable table;
    readonly FrozenDictionary<string, int> numbers;

    Teardown(TeardownRecord record, PartGroups groups)
    {
        Structure = new(record, groups);
        ImmutableArray<Operation> operations = [.. record.Operations.Where(operation => operation.Phase == OperationPhase.Disassembly)];
        Effects = new(Structure, operations);
        var (needs, hot) = (new NeedBuilder(Structure, operations, Effects), record.Tools.Where(tool => tool.HeatC is not null).Select(tool => tool.Id).ToHashSet(StringComparer.Ordinal));
        Works = [.. operations.Select(operation => Work.Of(operation, needs.Of(operation), needs.Number(operation.DirectlyAfter), hot.Contains))];
        freed = [.. Structure.Groups.Select((_, group) => needs.Freed(group))];
        numbers = operations.Select((operation, index) => (operation.Id, index)).ToFrozenDictionary(pair => pair.Id, pair => pair.index, StringComparer.Ordinal);
        table = new(Works.Select(work => work.Needs).Concat(freed));
    }

    public Structure Structure { get; }

    public Effects Effects { get; }

    /// <summary>Operations that take apart, in the order of the record.</summary>
    public ImmutableArray<Work> Works { get; }

    public static Teardown From(TeardownCase source, CancellationToken cancellation) => new(source.Record, source.Derive<PartGroups>());

    /// <summary>What must have been done for a group to be free.</summary>
    public Need Freed(int group) => freed[group];

    /// <summary>What must have been done for several groups to be free.</summary>
    public Need Freed(int[] groups) => new Need.All([.. groups.Select(Freed)]);

    /// <summary>Number of an operation that takes apart; -1 for any other.</summary>
    public int Number(string operation) => numbers.GetValueOrDefault(operation, -1);

    public bool Holds(Need need, Bits done) => Holding(done)(need);

    /// <summary>Tells which needs hold when these operations were done.</summary>
    public Func<Need, bool> Holding(Bits done)
    {
        var holds = table.Holding(done);
        return need => table.Find(need) is { } row ? holds[row] : need is Need.All all && all.Of.All(each => holds[table[each]]);
    }

    /// <summary>Whether an operation removes only what was removed already and undoes nothing that was not.</summary>
    public bool RemovesAgain(int work, Bits done)
    {
        var operation = Works[work].Operation;
        return operation.Removes.Length > 0 && operation.Moves.IsEmpty
            && Structure.GroupsOf(operation.Removes).All(group => Array.Exists(Effects.Naming(group), done.Has))
            && Structure.Undone(operation).All(joint => Array.Exists(Effects.Undoing(joint), done.Has));
    }

    /// <summary>Facts that do not hold and without which the need does not; of a choice the first branch.</summary>
    public ImmutableArray<Want> Lacking(Need need, Bits done) => [.. Open(need, Holding(done)).Select(fact => fact.Want).Distinct()];

    /// <summary>The facts that are open in a need.</summary>
    public static IEnumerable<Need.Fact> Open(Need need, Func<Need, bool> holds)
    {
        var (seen, open) = (new HashSet<Need>(ReferenceEqualityComparer.Instance), new Stack<Need>([need]));
        while (open.TryPop(out var next))
        {
            if (!seen.Add(next) || (next is Need.Fact or Need.Any && holds(next))) continue;
            if (next is Need.Fact fact) yield return fact;
            if (next is Need.All all) foreach (var part in all.Of.Reverse()) open.Push(part);
            if (next is Need.Any any && any.Of is [var first, ..]) open.Push(first);
        }
    }

    /// <summary>
    /// What can be done at all, barring some operations: each as soon as its needs hold. An operation that must come
    /// directly after another counts as possible with it, although that other can be done only once.
    /// </summary>
    public Bits Possible(Func<int, bool> barred)
    {
        var done = new Bits(Works.Length);
        for (var grown = true; grown;)
        {
            grown = false;
            var holds = table.Holding(done);
            for (var i = 0; i < Works.Length; i++)
                if (!barred(i) && holds[table[Works[i].Needs]] && (Works[i].DirectlyAfter is not { } before || (before >= 0 && done.Has(before)))) grown |= done.Add(i);
        }
        return done;
    }
}
