namespace FixScore.Records;

/// <summary>From when support years count.</summary>
public enum CountedFrom
{
    /// <summary>From the day the last unit is placed on the market.</summary>
    EndOfPlacement,

    /// <summary>From release.</summary>
    Release,

    /// <summary>From purchase.</summary>
    Purchase,
}
