using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>What is known of a part's spares under one measure.</summary>
/// <param name="Spares">The spares.</param>
/// <param name="Measure">The measure.</param>
sealed record SpareTermsFacts(PartSpares Spares, SpareMeasure Measure)
{
    /// <summary>Whether nothing of the measure is recorded for any spare that may be on sale.</summary>
    public bool IsUnknown => Spares.IsUnknown
        || !Spares.Listed.All(spare => spare.IsNotSold()) && Spares.Listed.All(spare => spare.IsNotSold() || Measured(spare) is null);

    public static SpareTermsFacts Of(TeardownCase source, Part part, SpareMeasure measure) => new(PartSpares.Of(source, part), measure);

    /// <summary>All that the measure of a spare can be.</summary>
    public Interval Of(Spare spare) => OpenRange.Of(Measured(spare));

    Quantity? Measured(Spare spare) => Measure == SpareMeasure.Years ? spare.Years : spare.DeliveryDays;
}
