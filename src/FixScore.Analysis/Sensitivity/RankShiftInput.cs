namespace FixScore.Analysis.Sensitivity;

/// <summary>What kind of choice an uncertain input is.</summary>
public enum InputKind
{
    /// <summary>The relative weight of a criterion.</summary>
    Weight,

    /// <summary>The rule of aggregation.</summary>
    Rule,

    /// <summary>A choice of the caller that makes another table, such as the way of normalising.</summary>
    Table,

    /// <summary>How many points the bands and levels of a criterion give.</summary>
    Bands,

    /// <summary>Whether gates cap.</summary>
    Gates,

    /// <summary>What an unknown outcome counts for: the profile's policy.</summary>
    Unknown,

    /// <summary>How points are read on which the source is silent.</summary>
    Readings,
}

/// <summary>An uncertain input.</summary>
/// <param name="Name">Its name, distinct in its study.</param>
/// <param name="Kind">What kind of choice it is.</param>
/// <param name="Ways">How many ways there are, each as likely; 0 where any number of a range is drawn.</param>
public sealed record RankShiftInput(string Name, InputKind Kind, int Ways);
