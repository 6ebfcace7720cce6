namespace FixScore.Records;

/// <summary>What the maker demands for a serialised part.</summary>
public enum SerialAction
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Something that can be done on the device.</summary>
    Local,

    /// <summary>Something done with the maker's server.</summary>
    Remote,
}
