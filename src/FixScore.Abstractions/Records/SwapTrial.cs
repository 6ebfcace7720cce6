using System.Collections.Immutable;

namespace FixScore.Records;

/// <summary>One trial: parts of other units were put into a host, and functions were checked.</summary>
public sealed record SwapTrial : NamedEntry
{
    /// <summary>Id of the unit that the parts were put into.</summary>
    public required string Host { get; init; }

    /// <summary>Which part came from which unit; empty for a control. In the order of the record.</summary>
    public required ImmutableArray<InstalledPart> Installed { get; init; }

    /// <summary>State of the boot lock; <c>null</c> when not observed, which is a context of its own.</summary>
    public LockState? LockState { get; init; }

    /// <summary>The software that ran; <c>null</c> when not observed, which is a context of its own.</summary>
    public string? Software { get; init; }

    /// <summary>What was done after the swap; <c>null</c> when not observed, which is a context of its own.</summary>
    public SwapProcedure? Procedure { get; init; }

    /// <summary>What was checked.</summary>
    public required ImmutableArray<FunctionCheck> Checks { get; init; }
}

/// <summary>A part that was put into a host.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Unit">Id of the unit it came from.</param>
public sealed record InstalledPart(string Part, string Unit);

/// <summary>How one function behaved in a trial.</summary>
public sealed record FunctionCheck : RecordEntry
{
    /// <summary>The function.</summary>
    public required string Function { get; init; }

    /// <summary>How it behaved.</summary>
    public required OneOf<SwapResult> Result { get; init; }

    /// <summary>Ids of the parts the function depends on; <c>default</c> when any part may be the cause.</summary>
    public EntryList<string> Implicates { get; init; }
}

/// <summary>One trial with the boot lock.</summary>
public sealed record LockTrial : NamedEntry
{
    /// <summary>Id of the unit.</summary>
    public required string Unit { get; init; }

    /// <summary>State before.</summary>
    public required LockState From { get; init; }

    /// <summary>State wanted.</summary>
    public required LockState To { get; init; }

    /// <summary>How it went.</summary>
    public OneOf<LockOutcome> Outcome { get; init; }

    /// <summary>Days of waiting that the maker imposes.</summary>
    public Quantity? WaitDays { get; init; }

    /// <summary>Whether it wipes the data; <c>null</c> when not observed.</summary>
    public bool? WipesData { get; init; }

    /// <summary>Whether the maker says that the warranty ends; <c>null</c> when not observed.</summary>
    public bool? WarrantyNotice { get; init; }

    /// <summary>What no longer works.</summary>
    public required ImmutableArray<FunctionLoss> Losses { get; init; }
}

/// <summary>A function lost with the boot lock open.</summary>
public sealed record FunctionLoss : RecordEntry
{
    /// <summary>The function.</summary>
    public required string Function { get; init; }

    /// <summary>When it comes back.</summary>
    public OneOf<Recovery> Recovers { get; init; }
}
