namespace FixScore.Records;

/// <summary>Who published or filmed a sequence.</summary>
public enum SequenceAuthor
{
    /// <summary>The maker.</summary>
    Maker,

    /// <summary>The assessor.</summary>
    Assessor,
}
