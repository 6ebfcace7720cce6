namespace FixScore.Records;

/// <summary>What a bond is made of.</summary>
public enum AdhesiveType
{
    /// <summary>A tape or film that sticks by pressure.</summary>
    PressureSensitive,

    /// <summary>A strip that lets go when stretched.</summary>
    StretchRelease,

    /// <summary>A foam tape.</summary>
    Foam,

    /// <summary>A glue that softens with heat.</summary>
    HotMelt,

    /// <summary>A liquid that cured.</summary>
    CuredLiquid,

    /// <summary>A structural adhesive.</summary>
    Structural,

    /// <summary>A heat-conducting bond.</summary>
    Thermal,

    /// <summary>A thread-locking liquid.</summary>
    ThreadLock,
}
