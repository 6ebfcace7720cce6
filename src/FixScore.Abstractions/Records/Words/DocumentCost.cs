namespace FixScore.Records;

/// <summary>What a document costs, cheapest first.</summary>
public enum DocumentCost
{
    /// <summary>Nothing.</summary>
    Free,

    /// <summary>A fee that does not deter.</summary>
    ReasonableFee,

    /// <summary>Any other fee.</summary>
    Fee,
}
