using System.Collections.Immutable;

namespace FixScore;

/// <summary>Spreads a node over the parts of a set of roles.</summary>
public sealed record Over
{
    /// <summary>The sets it may be, first match first; the last may be without a condition.</summary>
    public required ImmutableArray<SetChoice> Choices { get; init; }

    /// <summary>How roles are added up.</summary>
    public Aggregate Aggregate { get; init; }

    /// <summary>What several parts of one role count for.</summary>
    public required InstancePolicy Instances { get; init; }

    /// <summary>What a role that the device does not have counts for.</summary>
    public required AbsentPolicy Absent { get; init; }
}

/// <summary>A set and when it is taken.</summary>
/// <param name="Set">The set.</param>
/// <param name="When">When; <c>null</c> for always.</param>
public sealed record SetChoice(PartSet Set, SetCondition? When);

/// <summary>When a set is taken: one of the two is stated.</summary>
/// <param name="Present">A role that must be there.</param>
/// <param name="Foldable">Whether the device must fold or must not.</param>
public sealed record SetCondition(string? Present, bool? Foldable);

/// <summary>What several parts of one role count for.</summary>
public enum InstancePolicy
{
    /// <summary>The lowest of their scores.</summary>
    Lowest,

    /// <summary>The mean of their scores.</summary>
    Mean,
}

/// <summary>What a role that the device does not have counts for.</summary>
public enum AbsentPolicy
{
    /// <summary>The highest of the scale.</summary>
    Top,

    /// <summary>It is left out.</summary>
    Skip,
}
