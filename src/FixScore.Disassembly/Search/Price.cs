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

    /// <summary>Whether an operation that must be done anyway may as well be done now: it costs no more now than ever, and leaves the bench as it is.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="operation">The operation.</param>
    /// <param name="openers">Whether the first operation of a step can still save a change of tool.</param>
    /// <param name="option">The set of tools to do it with.</param>
    public abstract bool IsBestNow(int bench, int operation, bool openers, out int option);

    /// <summary>Whether operations that nothing needs can make others cheaper; see <see cref="StepPrice"/>.</summary>
    public virtual bool HasPairs => false;

    /// <summary>Whether an operation can be done with bare hands and leaves its step open.</summary>
    public virtual bool IsBare(int operation) => false;

    /// <summary>Whether an operation that nothing needs can open a step so that others become cheaper.</summary>
    public virtual bool MayOpen(int operation, ReadOnlySpan<ulong> helpful) => false;

    /// <summary>Whether a step is open.</summary>
    public virtual bool IsOpen(int bench) => true;

    /// <summary>No way from here to the goal costs less.</summary>
    public abstract Int128 Least(ReadOnlySpan<ulong> done, int bench);

    /// <summary>No cost of a single way is above this.</summary>
    public abstract Int128 Most { get; }
}
