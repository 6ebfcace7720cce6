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
    public abstract bool IsBestNow(int bench, int operation, out int option);

    /// <summary>Whether doing an operation that nothing needs can make what follows cheaper.</summary>
    public virtual bool MayOpen(int operation) => false;

    /// <summary>No way from here to the goal costs less.</summary>
    public abstract Int128 Least(ReadOnlySpan<ulong> done, int bench);

    /// <summary>No cost of a single way is above this.</summary>
    public abstract Int128 Most { get; }
}
