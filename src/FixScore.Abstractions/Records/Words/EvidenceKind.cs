namespace FixScore.Records;

/// <summary>What kind of proof it is.</summary>
public enum EvidenceKind
{
    /// <summary>Footage.</summary>
    Video,

    /// <summary>A photo.</summary>
    Photo,

    /// <summary>A screenshot.</summary>
    Screenshot,

    /// <summary>A log.</summary>
    Log,

    /// <summary>A document.</summary>
    Document,

    /// <summary>A web page.</summary>
    WebPage,

    /// <summary>A written note.</summary>
    Note,
}
