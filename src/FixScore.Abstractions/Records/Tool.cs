using System.Collections.Immutable;

namespace FixScore.Records;

/// <summary>A tool used in operations.</summary>
public sealed record Tool : NamedEntry
{
    /// <summary>In <see cref="SuppliedWith"/>: the tool comes with the product.</summary>
    public const string Product = "product";

    /// <summary>The name people read.</summary>
    public required string Name { get; init; }

    /// <summary>How it can be had.</summary>
    public required OneOf<ToolClass> Class { get; init; }

    /// <summary>With what it is supplied: <see cref="Product"/> or ids of parts whose spare brings it.</summary>
    public ImmutableArray<string> SuppliedWith { get; init; } = [];

    /// <summary>How hot it makes what it touches, in degrees Celsius; <c>null</c> for a tool that does not heat.</summary>
    public Quantity? HeatC { get; init; }

    /// <summary>The solvent it applies; <c>null</c> for none.</summary>
    public string? Solvent { get; init; }
}

/// <summary>Something used up in operations.</summary>
public sealed record Consumable : NamedEntry
{
    /// <summary>The name people read.</summary>
    public required string Name { get; init; }

    /// <summary>What kind of thing it is.</summary>
    public string? Kind { get; init; }

    /// <summary>What one costs.</summary>
    public Price? Price { get; init; }
}
