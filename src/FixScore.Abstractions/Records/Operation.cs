using System.Collections.Immutable;

namespace FixScore.Records;

/// <summary>Something that can be done to take the device apart or to put it together.</summary>
public sealed record Operation : NamedEntry
{
    /// <summary>What is done.</summary>
    public required OperationAction Action { get; init; }

    /// <summary>Ids of the tools in use together; empty for bare hands, <c>default</c> when unknown.</summary>
    public EntryList<string> Tools { get; init; }

    /// <summary>Other sets of tools that do as well; an empty set is bare hands.</summary>
    public ImmutableArray<ImmutableArray<string>> OrTools { get; init; } = [];

    /// <summary>What must hold before it can be done; all of them.</summary>
    public ImmutableArray<Condition> After { get; init; } = [];

    /// <summary>Id of the operation that must come directly before, because heat cools.</summary>
    public string? DirectlyAfter { get; init; }

    /// <summary>Ids of joints it undoes.</summary>
    public ImmutableArray<string> Undoes { get; init; } = [];

    /// <summary>Ids of parts it shifts aside, still held.</summary>
    public ImmutableArray<string> Moves { get; init; } = [];

    /// <summary>Ids of joints that go on holding what it moves.</summary>
    public ImmutableArray<string> HoldsBy { get; init; } = [];

    /// <summary>Ids of parts it takes out.</summary>
    public ImmutableArray<string> Removes { get; init; } = [];

    /// <summary>Ids of parts and joints it harms, beyond what <see cref="Joint.Reuse"/> says.</summary>
    public ImmutableArray<string> Damages { get; init; } = [];

    /// <summary>Seconds it takes.</summary>
    public Quantity? Seconds { get; init; }

    /// <summary>Of these, seconds of waiting with hands free.</summary>
    public Quantity? WaitSeconds { get; init; }

    /// <summary>Seconds to put back together what it took apart.</summary>
    public Quantity? ReassemblySeconds { get; init; }

    /// <summary>Taking apart (the default) or putting together.</summary>
    public OperationPhase Phase { get; init; }

    /// <summary>Ids of consumables it uses up.</summary>
    public ImmutableArray<string> Consumes { get; init; } = [];

    /// <summary>What to beware of.</summary>
    public string? Caution { get; init; }

    /// <summary>What can hurt; <c>default</c> when not observed.</summary>
    public EntryList<Hazard> Hazards { get; init; }

    /// <summary>Where it can be done.</summary>
    public OneOf<WorkEnvironment> Environment { get; init; }

    /// <summary>Who can do it.</summary>
    public OneOf<Skill> Skill { get; init; }

    /// <summary>Where the footage shows it.</summary>
    public ImmutableArray<Footage> Footage { get; init; } = [];

    /// <summary>How it went, unit by unit.</summary>
    public ImmutableArray<OperationOutcome> Outcomes { get; init; } = [];
}

/// <summary>A piece of footage. Pieces of one unit add up; several units give a range.</summary>
public sealed record Footage : RecordEntry
{
    /// <summary>Id of the evidence it is part of.</summary>
    public required string Source { get; init; }

    /// <summary>Id of the unit shown.</summary>
    public required string Unit { get; init; }

    /// <summary>Time from the start of the footage at which it begins.</summary>
    public required TimeSpan From { get; init; }

    /// <summary>Time from the start of the footage at which it ends; not before <see cref="From"/>.</summary>
    public required TimeSpan To { get; init; }
}

/// <summary>How an operation went on one unit.</summary>
public sealed record OperationOutcome : RecordEntry
{
    /// <summary>Id of the unit.</summary>
    public required string Unit { get; init; }

    /// <summary>How it went.</summary>
    public required OneOf<OutcomeResult> Result { get; init; }

    /// <summary>Ids of parts and joints that were damaged.</summary>
    public ImmutableArray<string> Damages { get; init; } = [];
}
