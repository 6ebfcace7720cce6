namespace FixScore.Disassembly.Tests.Oracle;

/// <summary>A way from some state on to the end. Less is better: damaged parts, damaged joints, cost, operations, then places in the record.</summary>
/// <param name="DamagedParts">How many parts are damaged in all, from the start on.</param>
/// <param name="DamagedJoints">How many joints are damaged in all, from the start on.</param>
/// <param name="Cost">What the rest of the way costs.</param>
/// <param name="Sequence">The operations to come.</param>
sealed record Best(int DamagedParts, int DamagedJoints, decimal Cost, Sequence Sequence)
{
    public Best Before(int operation, decimal cost) => this with { Cost = Cost + cost, Sequence = new(operation, Sequence) };

    public static Best? Better(Best? one, Best? other) =>
        one is null ? other : other is null || one.CompareTo(other) <= 0 ? one : other;

    public bool SameDamage(Best other) => (DamagedParts, DamagedJoints) == (other.DamagedParts, other.DamagedJoints);

    int CompareTo(Best other)
    {
        var order = DamagedParts.CompareTo(other.DamagedParts);
        if (order == 0) order = DamagedJoints.CompareTo(other.DamagedJoints);
        if (order == 0) order = Cost.CompareTo(other.Cost);
        if (order == 0) order = Sequence.Length.CompareTo(other.Sequence.Length);
        return order == 0 ? Sequence.CompareTo(other.Sequence) : order;
    }
}

/// <summary>Operations in order, by place in the record.</summary>
sealed class Sequence(int first, Sequence? rest)
{
    public static Sequence Empty { get; } = new(-1, null);

    public int Length { get; } = rest is null ? 0 : rest.Length + 1;

    public IEnumerable<int> Operations => rest is null ? [] : rest.Operations.Prepend(first);

    /// <summary>Which of two sequences of one length stands first in the record.</summary>
    public int CompareTo(Sequence other) => rest is null ? 0 : first != other.First ? first.CompareTo(other.First) : rest.CompareTo(other.Rest);

    int First => first;

    Sequence Rest => rest!;
}
