namespace FixScore.Disassembly.Search;

/// <summary>Cost of a way so far: exact, then how many operations. Less is better.</summary>
readonly record struct Toll(Int128 Cost, int Operations) : IComparable<Toll>
{
    public int CompareTo(Toll other) => Cost.CompareTo(other.Cost) is var byCost && byCost != 0 ? byCost : Operations.CompareTo(other.Operations);

    public static Toll operator +(Toll left, Toll right) => new(left.Cost + right.Cost, left.Operations + right.Operations);

    public static bool operator <(Toll left, Toll right) => left.CompareTo(right) < 0;

    public static bool operator >(Toll left, Toll right) => left.CompareTo(right) > 0;
}

/// <summary>What operations cost at the bench, and the least that is still to pay.</summary>
/// <remarks>The bench is a number that says all that later costs depend on beside what was done: tools in hand, whether a step is open.</remarks>
abstract class Price
{
    /// <summary>How the bench is at the start.</summary>
    public abstract int Start { get; }

    /// <summary>How many sets of tools do for an operation.</summary>
    public abstract int Options(int operation);

    /// <summary>Cost of an operation, and the bench after it.</summary>
    public abstract (Int128 Cost, int Bench) Of(int bench, int operation, int option);

    /// <summary>Whether an operation that must be done anyway may as well be done now: no way through this state is cheaper when it is done later.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="operation">The operation.</param>
    /// <param name="reach">What can still help.</param>
    /// <param name="option">The set of tools to do it with.</param>
    public abstract bool IsBestNow(int bench, int operation, Reach reach, out int option);

    /// <summary>A number that operations share which cost the same in whatever state; -1 for one like no other.</summary>
    public virtual int Kind(int operation) => -1;

    /// <summary>A bench on which all that can still help costs the same.</summary>
    public virtual int Settled(int bench, Reach reach) => bench;

    /// <summary>Whether another operation can leave in hand several of the tools that this one takes up together.</summary>
    public virtual bool IsPaired(int operation) => false;

    /// <summary>Whether an operation can be done with bare hands.</summary>
    public virtual bool IsByHand(int operation) => false;

    /// <summary>Whether an operation can be done with bare hands and leaves its step open.</summary>
    public virtual bool IsBare(int operation) => false;

    /// <summary>Whether an operation that nothing needs can open a step so that others become cheaper; see <see cref="StepPrice"/>.</summary>
    public virtual bool MayOpen(int operation, Reach reach) => false;

    /// <summary>Whether it can do so on this bench.</summary>
    public virtual bool OpensNow(int bench, int operation, int option, Reach reach) => false;

    /// <summary>No way from here to the goal costs less.</summary>
    public abstract Int128 Least(ReadOnlySpan<ulong> done, int bench);

    /// <summary>No cost of a single way is above this.</summary>
    public abstract Int128 Most { get; }
}
