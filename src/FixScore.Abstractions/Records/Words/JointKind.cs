namespace FixScore.Records;

/// <summary>How parts are held together.</summary>
public enum JointKind
{
    /// <summary>A threaded fastener.</summary>
    Screw,

    /// <summary>A clip that springs open and shut.</summary>
    SnapFit,

    /// <summary>Glue, named further by its type.</summary>
    Adhesive,

    /// <summary>A tape that is no bond of its own strength.</summary>
    Tape,

    /// <summary>An electrical plug or board connection.</summary>
    Connector,

    /// <summary>Held by interference.</summary>
    PressFit,

    /// <summary>Joined by molten metal.</summary>
    Solder,

    /// <summary>A rivet or heat stake.</summary>
    Rivet,

    /// <summary>Held by magnets.</summary>
    Magnet,

    /// <summary>A seal.</summary>
    Gasket,

    /// <summary>A lever or slide that locks.</summary>
    Latch,

    /// <summary>A clamp on a cable.</summary>
    CableClamp,

    /// <summary>Welded.</summary>
    Weld,

    /// <summary>Touching contacts; parts by itself when one side leaves.</summary>
    Contact,

    /// <summary>None of these.</summary>
    Other,
}
