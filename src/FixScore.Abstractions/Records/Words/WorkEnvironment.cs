namespace FixScore.Records;

/// <summary>Where an operation can be done, least demanding first (EN 45554 terms).</summary>
public enum WorkEnvironment
{
    /// <summary>Where the product is used.</summary>
    Use,

    /// <summary>A workshop.</summary>
    Workshop,

    /// <summary>Conditions comparable to the factory.</summary>
    Production,
}
