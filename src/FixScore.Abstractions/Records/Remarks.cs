using System.Collections.Immutable;

namespace FixScore.Records;

/// <summary>An observation for a criterion of somebody else.</summary>
public sealed record Observation : RecordEntry
{
    /// <summary>Name of the observation, <c>vendor.name</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The number observed; <c>null</c> when it is a flag or a word.</summary>
    public Quantity? Number { get; init; }

    /// <summary>The flag observed; <c>null</c> when it is a number or a word.</summary>
    public bool? Flag { get; init; }

    /// <summary>The slug observed; <c>null</c> when it is a number or a flag.</summary>
    public string? Word { get; init; }

    /// <summary>Unit of a number.</summary>
    public string? Unit { get; init; }

    /// <summary>Ids of the parts it is about; empty for the whole device.</summary>
    public ImmutableArray<string> Parts { get; init; } = [];
}

/// <summary>What was noticed and fits nowhere else.</summary>
public sealed record Remark : RecordEntry
{
    /// <summary>What it is about.</summary>
    public required string Topic { get; init; }

    /// <summary>What was noticed.</summary>
    public required string Text { get; init; }

    /// <summary>Ids of whatever it concerns.</summary>
    public ImmutableArray<string> About { get; init; } = [];
}

/// <summary>Footage, a photo or a document that shows something.</summary>
public sealed record EvidenceItem : NamedEntry
{
    /// <summary>What kind of proof it is.</summary>
    public required EvidenceKind Kind { get; init; }

    /// <summary>Where it is kept: a file name or address.</summary>
    public required string Ref { get; init; }

    /// <summary>SHA-256 of the file, 64 lower-case hexadecimal digits.</summary>
    public string? Sha256 { get; init; }

    /// <summary>When it was retrieved.</summary>
    public DateOnly? Retrieved { get; init; }
}
