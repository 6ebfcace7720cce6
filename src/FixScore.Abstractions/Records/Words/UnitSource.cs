namespace FixScore.Records;

/// <summary>What a unit is.</summary>
public enum UnitSource
{
    /// <summary>A whole device.</summary>
    Device,

    /// <summary>A loose spare of the maker.</summary>
    MakerSpare,

    /// <summary>A loose spare of somebody else.</summary>
    CompatibleSpare,

    /// <summary>A loose part out of another device.</summary>
    UsedSpare,
}
