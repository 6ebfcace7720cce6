using FixScore.Records;

namespace FixScore.Disassembly.Tests.Oracle;

/// <summary>What operations mean, word by word: what can be done in a state and what it changes. Shares no code with what it checks.</summary>
sealed class Simulator
{
    readonly TeardownRecord record;

    public Simulator(TeardownRecord record)
    {
        this.record = record;
        Sides = new(record);
        Operations = [.. record.Operations];
        undoes = [.. Operations.Select(operation => Sides.Joints(operation.Undoes) & ~Sides.Integral)];
        removes = [.. Operations.Select(operation => Sides.Groups(Sides.Parts(operation.Removes)))];
        moves = [.. Operations.Select(operation => Sides.Groups(Sides.Parts(operation.Moves)))];
        takesOut = [.. removes.Select(Sides.WithRiders)];
        shifts = [.. moves.Select((named, i) => Sides.WithRiders(named) & ~takesOut[i])];
        holdsBy = [.. Operations.Select(operation => Sides.Joints(operation.HoldsBy))];
    }

    readonly int[] undoes;
    readonly int[] removes;
    readonly int[] moves;
    readonly int[] takesOut;
    readonly int[] shifts;
    readonly int[] holdsBy;

    public Sides Sides { get; }

    public Operation[] Operations { get; }

    public bool CanBeDone(State state, int operation)
    {
        var entry = Operations[operation];
        return entry.Phase == OperationPhase.Disassembly
            && !state.Done.Has(operation)
            && entry.After.All(item => Holds(state, item))
            && (entry.DirectlyAfter is null || (state.Last >= 0 && Operations[state.Last].Id == entry.DirectlyAfter))
            && JointsOf(undoes[operation]).All(joint => state.Away.Holds(Sides.Under[joint]))
            && NothingHoldsBack(state, operation);
    }

    public State After(State state, int operation)
    {
        // A reading: what rides on a part by the record parts from its contacts with the carrier, even when it left before.
        var (removed, moved) = (takesOut[operation], shifts[operation]);
        var parted = JointsOf(Sides.Contact).Where(joint => Parts(Sides.Joins[joint], removed, moved)).Aggregate(0, (set, joint) => set | 1 << joint);
        return new(
            state.Done | 1 << operation, operation,
            state.Removed | removes[operation],
            state.Gone | removed,
            state.Away | removed | moved,
            state.Undone | undoes[operation] | parted);
    }

    /// <summary>When a group is freed: off everything that does not ride on it, and removed by name if there is a way to do so.</summary>
    public (int Undone, int Removed) Freedom(int group) =>
        (Holding(group, Sides.WithRiders(group)).Aggregate(0, (set, joint) => set | 1 << joint), IsNamed(removes, group) ? group : 0);

    /// <summary>Whether the record leaves open how the group is held, or what undoes what holds it.</summary>
    public bool IsUnknown(int group)
    {
        var holding = Holding(group, Sides.WithRiders(group)).ToArray();
        return (!JointsOf(-1).Any(joint => Crosses(joint, group, group)) && !IsNamed(removes, group) && !IsNamed(moves, group))
            || holding.Any(joint => !Sides.Contact.Has(joint) && !Disassembling.Any(operation => undoes[operation].Has(joint)));
    }

    IEnumerable<int> Disassembling => Enumerable.Range(0, Operations.Length).Where(i => Operations[i].Phase == OperationPhase.Disassembly);

    bool IsNamed(int[] named, int group) => Disassembling.Any(operation => named[operation].Meets(group));

    // Joints between a group and parts other than it and those that ride on it.
    IEnumerable<int> Holding(int group, int own) => JointsOf(~Sides.Integral).Where(joint => Crosses(joint, group, own));

    bool Crosses(int joint, int group, int own) => Sides.Joins[joint].Meets(group) && Sides.Joins[joint].Meets(~own);

    IEnumerable<int> JointsOf(int set) => Enumerable.Range(0, Sides.Joins.Length).Where(joint => set.Has(joint));

    // A contact parts when one side is removed or moved without the other.
    static bool Parts(int joins, int removed, int moved) =>
        (joins.Meets(removed) && joins.Meets(~removed)) || (joins.Meets(moved) && joins.Meets(~moved));

    // A part stays that has not left and does not leave now; a part moved aside stays, unless it is moved along.
    bool NothingHoldsBack(State state, int operation)
    {
        var (removed, moved) = (takesOut[operation], shifts[operation]);
        var stays = Sides.AllParts & ~state.Gone & ~removed;
        return JointsOf(~(state.Undone | undoes[operation] | Sides.Contact)).All(joint =>
            !(Sides.Joins[joint].Meets(removed) && Sides.Joins[joint].Meets(stays))
            && !(Sides.Joins[joint].Meets(moved) && Sides.Joins[joint].Meets(stays & ~moved) && !holdsBy[operation].Has(joint)));
    }

    bool Holds(State state, Condition item) => item switch
    {
        Condition.Done done when record.Milestones.FirstOrDefault(each => each.Id == done.Id) is { } milestone => milestone.When.All(each => Holds(state, each)),
        Condition.Done done => state.Done.Has(Array.FindIndex(Operations, each => each.Id == done.Id)),
        Condition.Removed removed => state.Gone.Holds(Sides.Parts([removed.Part])),
        Condition.Away away => state.Away.Holds(Sides.Parts([away.Part])),
        Condition.Undone undone => state.Undone.Holds(Sides.Joints([undone.Joint])),
        Condition.AnyOf any => any.Items.Any(each => Holds(state, each)),
        Condition.AllOf all => all.Items.All(each => Holds(state, each)),
        _ => throw new InvalidOperationException(),
    };
}
