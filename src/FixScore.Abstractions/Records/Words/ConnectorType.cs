namespace FixScore.Records;

/// <summary>How a cable or board connects.</summary>
public enum ConnectorType
{
    /// <summary>A press-on connector between boards or flexible circuits.</summary>
    BoardToBoard,

    /// <summary>A flat cable under a latch.</summary>
    LatchedFlatCable,

    /// <summary>A coaxial plug.</summary>
    Coaxial,

    /// <summary>Spring contacts.</summary>
    SpringContact,

    /// <summary>A plug and socket.</summary>
    Plug,

    /// <summary>A wire soldered on.</summary>
    SolderedWire,
}
