namespace FixScore.Analysis.Assessors;

/// <summary>What differences between values mean.</summary>
/// <remarks>S. S. Stevens, On the theory of scales of measurement, 1946.</remarks>
public enum MeasurementLevel
{
    /// <summary>Values are equal or not: words coded as numbers.</summary>
    Nominal,

    /// <summary>Values have an order.</summary>
    Ordinal,

    /// <summary>Differences of values compare, as points do.</summary>
    Interval,

    /// <summary>Ratios of values compare, as seconds do; values are 0 or more.</summary>
    Ratio,
}
