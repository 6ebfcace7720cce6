using System.Collections.Immutable;

namespace FixScore.Records;

/// <summary>An entry of a list in a teardown record.</summary>
/// <remarks>
/// Entries are immutable. Two entries are equal when their members are; lists inside compare by identity, so compare
/// entries by id. What was not observed is <c>null</c>, an unknown <see cref="OneOf{T}"/> or an <see cref="EntryList{T}"/>
/// that was not recorded, unless the member states a default.
/// </remarks>
public abstract record RecordEntry
{
    private protected RecordEntry() { }

    /// <summary>A remark of the assessor.</summary>
    public string? Note { get; init; }

    /// <summary>Ids of the evidence that shows it.</summary>
    public ImmutableArray<string> Evidence { get; init; } = [];
}

/// <summary>An entry with an id that is unique in the whole record.</summary>
public abstract record NamedEntry : RecordEntry
{
    private protected NamedEntry() { }

    /// <summary>The id: lower-case letters and digits, groups joined by <c>-</c> or <c>.</c>.</summary>
    public required string Id { get; init; }
}
