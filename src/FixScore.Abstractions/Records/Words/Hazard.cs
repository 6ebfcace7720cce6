namespace FixScore.Records;

/// <summary>What can hurt whoever does the work.</summary>
public enum Hazard
{
    /// <summary>A lithium cell that can burn when pierced, bent or overheated.</summary>
    LithiumCell,

    /// <summary>Glass that can splinter.</summary>
    Glass,

    /// <summary>Sharp edges.</summary>
    SharpEdge,

    /// <summary>A capacitor that keeps a dangerous charge.</summary>
    MainsCapacitor,

    /// <summary>A laser source.</summary>
    Laser,

    /// <summary>Hot surfaces or tools.</summary>
    HotSurface,

    /// <summary>A flammable solvent.</summary>
    FlammableSolvent,

    /// <summary>Fumes or vapours.</summary>
    Fumes,

    /// <summary>Parts under spring tension.</summary>
    SpringTension,

    /// <summary>Strong magnets.</summary>
    StrongMagnet,

    /// <summary>Parts that static charge destroys.</summary>
    StaticSensitive,
}
