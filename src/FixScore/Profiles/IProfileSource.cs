namespace FixScore;

/// <summary>Where base profiles are found.</summary>
public interface IProfileSource
{
    /// <summary>The text of a profile in UTF-8; <c>null</c> when there is none of that id and version.</summary>
    ReadOnlyMemory<byte>? Find(string id, string version);
}
