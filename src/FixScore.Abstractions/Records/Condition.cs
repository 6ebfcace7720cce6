using System.Collections.Immutable;

namespace FixScore.Records;

/// <summary>Something that must hold before an operation can be done.</summary>
public abstract record Condition
{
    private protected Condition() { }

    /// <summary>An operation was done, or a milestone was reached.</summary>
    /// <param name="Id">Id of the operation or milestone.</param>
    public sealed record Done(string Id) : Condition;

    /// <summary>A part was removed.</summary>
    /// <param name="Part">Id of the part.</param>
    public sealed record Removed(string Part) : Condition;

    /// <summary>A part was removed or moved.</summary>
    /// <param name="Part">Id of the part.</param>
    public sealed record Away(string Part) : Condition;

    /// <summary>A joint was undone.</summary>
    /// <param name="Joint">Id of the joint.</param>
    public sealed record Undone(string Joint) : Condition;

    /// <summary>At least one of several holds.</summary>
    /// <param name="Items">The conditions.</param>
    public sealed record AnyOf(ImmutableArray<Condition> Items) : Condition;

    /// <summary>All of several hold.</summary>
    /// <param name="Items">The conditions.</param>
    public sealed record AllOf(ImmutableArray<Condition> Items) : Condition;
}

/// <summary>A name for a state; reaching it costs nothing.</summary>
public sealed record Milestone : NamedEntry
{
    /// <summary>What must hold; all of them.</summary>
    public required ImmutableArray<Condition> When { get; init; }
}

/// <summary>A way to a part that was published or filmed.</summary>
public sealed record Sequence : NamedEntry
{
    /// <summary>Id of the part it frees.</summary>
    public required string Part { get; init; }

    /// <summary>Who published or filmed it.</summary>
    public required SequenceAuthor By { get; init; }

    /// <summary>Id of the unit it was filmed on.</summary>
    public string? Unit { get; init; }

    /// <summary>Ids of the operations, in order.</summary>
    public required ImmutableArray<string> Operations { get; init; }
}
