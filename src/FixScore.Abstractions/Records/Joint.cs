using System.Collections.Immutable;

namespace FixScore.Records;

/// <summary>What holds two or more parts together, each pair of them.</summary>
public sealed record Joint : NamedEntry
{
    /// <summary>Ids of the parts it holds; two or more.</summary>
    public required ImmutableArray<string> Joins { get; init; }

    /// <summary>How it holds.</summary>
    public required JointKind Kind { get; init; }

    /// <summary>How many there are alike. Default: 1.</summary>
    public Quantity Count { get; init; } = 1;

    /// <summary>What undoing it leaves of it.</summary>
    public OneOf<Reuse> Reuse { get; init; }

    /// <summary>Whether it is never meant to be undone, so that its parts are replaced together. Default: no.</summary>
    public bool Integral { get; init; }

    /// <summary>Ids of parts that must be away before it can be reached.</summary>
    public ImmutableArray<string> Under { get; init; } = [];

    /// <summary>Where it sits.</summary>
    public string? Where { get; init; }

    /// <summary>Whether it is out of sight; <c>null</c> when not observed.</summary>
    public bool? Hidden { get; init; }

    /// <summary>The screw, for a joint of that kind.</summary>
    public Screw? Screw { get; init; }

    /// <summary>The adhesive, for a joint of that kind.</summary>
    public Adhesive? Adhesive { get; init; }

    /// <summary>The connector, for a joint of that kind.</summary>
    public Connector? Connector { get; init; }
}

/// <summary>A screw type.</summary>
/// <param name="Drive">The drive, an open word such as <c>hexalobular</c>.</param>
/// <param name="DiameterMm">Nominal thread diameter in millimetres.</param>
/// <param name="LengthMm">Length in millimetres.</param>
public sealed record Screw(OneOf<string> Drive, Quantity DiameterMm, Quantity LengthMm);

/// <summary>A bond, as far as it was measured.</summary>
public sealed record Adhesive
{
    /// <summary>What it is made of.</summary>
    public OneOf<AdhesiveType> Type { get; init; }

    /// <summary>180-degree peel strength in newtons per 25 mm width (ISO 29862, ASTM D3330).</summary>
    public Quantity? PeelNPer25Mm { get; init; }

    /// <summary>Lap shear strength in megapascals.</summary>
    public Quantity? ShearMPa { get; init; }

    /// <summary>Width of the bond across the direction of peeling, in millimetres.</summary>
    public Quantity? WidthMm { get; init; }

    /// <summary>Bonded area in square millimetres.</summary>
    public Quantity? AreaMm2 { get; init; }

    /// <summary>Temperature at which it softens, in degrees Celsius; may be negative.</summary>
    public Quantity? SoftensAtC { get; init; }
}

/// <summary>An electrical connection.</summary>
/// <param name="Type">How it connects.</param>
public sealed record Connector(OneOf<ConnectorType> Type);
