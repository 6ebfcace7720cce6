namespace FixScore.Records;

/// <summary>Who can do an operation, least demanding first (EN 45554 terms).</summary>
public enum Skill
{
    /// <summary>A person without repair experience.</summary>
    Layman,

    /// <summary>A person with general knowledge of repair and safety.</summary>
    Generalist,

    /// <summary>A person with training for this kind of product.</summary>
    Expert,

    /// <summary>The maker or somebody it authorised.</summary>
    Manufacturer,
}
