using System.Collections.Immutable;

namespace FixScore.Records;

/// <summary>A document. One that was looked for and does not exist is listed with audience <see cref="Audience.Nobody"/>.</summary>
public sealed record Document : RecordEntry
{
    /// <summary>What it is about.</summary>
    public required DocumentSubject Subject { get; init; }

    /// <summary>Who can get it.</summary>
    public OneOf<Audience> Audience { get; init; }

    /// <summary>What it costs.</summary>
    public OneOf<DocumentCost> Cost { get; init; }

    /// <summary>For how many years it is kept available.</summary>
    public Quantity? Years { get; init; }

    /// <summary>Ids of the parts it is about; empty for the whole device.</summary>
    public ImmutableArray<string> Parts { get; init; } = [];
}

/// <summary>A spare part. One that was looked for and is not on offer is listed with audience <see cref="Audience.Nobody"/>.</summary>
public sealed record Spare : RecordEntry
{
    /// <summary>Id of the part it replaces.</summary>
    public required string Part { get; init; }

    /// <summary>Who can buy it.</summary>
    public OneOf<Audience> Audience { get; init; }

    /// <summary>For how many years it is kept available.</summary>
    public Quantity? Years { get; init; }

    /// <summary>Working days until delivery.</summary>
    public Quantity? DeliveryDays { get; init; }

    /// <summary>What it costs.</summary>
    public Price? Price { get; init; }

    /// <summary>Ids of parts it is only sold together with.</summary>
    public ImmutableArray<string> OnlyBundledWith { get; init; } = [];

    /// <summary>Whether fasteners come with it; <c>null</c> when not observed.</summary>
    public FastenersIncluded? FastenersIncluded { get; init; }
}

/// <summary>Which fasteners come with a spare.</summary>
/// <param name="All">Whether all fasteners of the part's group are included.</param>
/// <param name="Joints">Ids of joints whose fasteners are included by name.</param>
public sealed record FastenersIncluded(bool All, ImmutableArray<string> Joints);

/// <summary>How long software is supported, in years.</summary>
public sealed record Support
{
    /// <summary>Years of security updates.</summary>
    public Quantity? SecurityUpdateYears { get; init; }

    /// <summary>Years of corrective updates.</summary>
    public Quantity? CorrectiveUpdateYears { get; init; }

    /// <summary>Years of functionality updates.</summary>
    public Quantity? FunctionalityUpdateYears { get; init; }

    /// <summary>From when the years count.</summary>
    public OneOf<CountedFrom> CountedFrom { get; init; }
}
