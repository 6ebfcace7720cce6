using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Support;

/// <summary>The event that years must count from; the words of option <c>countedFrom</c>.</summary>
enum SupportStart
{
    EndOfPlacement,
    Release,
    Purchase,
    Any,
}

/// <summary>What parts of a year count for; the words of option <c>fractions</c>.</summary>
enum YearFractions
{
    Floor,
    Interpolate,
}

/// <summary>Options of <see cref="SoftwareSupportCriterion"/>.</summary>
static class SoftwareSupportOptions
{
    public static readonly Option<ImmutableArray<string>> Kinds = Options.Words(
        "kinds", ["security", "corrective", "functionality"],
        "The kinds of update that must be promised: security, corrective, functionality. Years of any other kind are unknown.");

    // Regulation (EU) 2023/1669 Annex IV point 5: 7 years 5 points, 6 years 3, 5 years 1.
    public static readonly Option<Bands> Bands = Options.Bands(
        "bands", FixScore.Bands.AtLeast((7, 1m), (6, 0.5m), (5, 0m)), "a", "Points for the years of updates.");

    public static readonly Option<SupportStart> CountedFrom = Options.Choice(
        "countedFrom", SupportStart.Any, "The event that years must count from. Years counted from another are unknown.");

    public static readonly Option<YearFractions> Fractions = Options.Choice(
        "fractions", YearFractions.Floor, "Whether a part of a year counts for nothing, or points are interpolated between the bands.");

    public static ImmutableArray<Option> All { get; } = [Kinds, Bands, CountedFrom, Fractions, Options.NoLevel];

    /// <summary>The event of the record that is asked for; <c>null</c> when any will do.</summary>
    public static CountedFrom? Event(this SupportStart start) => start switch
    {
        SupportStart.EndOfPlacement => Records.CountedFrom.EndOfPlacement,
        SupportStart.Release => Records.CountedFrom.Release,
        SupportStart.Purchase => Records.CountedFrom.Purchase,
        _ => null,
    };
}
