using System.Collections.Immutable;

namespace FixScore.Criteria.Pairing;

/// <summary>Options of the criterion. The default points are own judgement.</summary>
static class SoftwarePairingOptions
{
    public const string UnknownProcedure = "unknown";

    public static Option<Levels> Results { get; } = Options.Levels(
        "results",
        Levels.Of(("works", 1m), ("notice", 0.75m), ("warning", 0.5m), ("degraded", 0.2m), ("refused", 0m)),
        "Points for the worst result proven in swap trials.");

    public static Option<Levels> Serialisation { get; } = Options.Levels(
        "serialisation",
        Levels.Of(("none", 1m), ("local", 0.8m), ("remote", 0.4m)),
        "Points for the notification and for the authorisation that the maker demands; the worse of both counts.");

    public static Option<ImmutableArray<string>> Procedures { get; } = Options.Words(
        "procedures",
        ["none", UnknownProcedure],
        "Trials count when this was done after the swap: none, calibration, notification, authorisation, reset, or unknown. By default the part is judged as first fitted.");

    public static Option<WhenSerialisationUnknown> SerialisedUnknown { get; } = Options.Choice(
        "serialisedUnknown",
        WhenSerialisationUnknown.Widens,
        "Whether an unrecorded demand of the maker widens the score of a part that trials clear.");

    public static ImmutableArray<Option> All { get; } = [Results, Serialisation, Procedures, SerialisedUnknown, Options.NoLevel];
}

/// <summary>What it means for a part cleared by trials that no demand of the maker was recorded.</summary>
enum WhenSerialisationUnknown
{
    /// <summary>The demand is unknown and widens the score.</summary>
    Widens,

    /// <summary>Nothing: it was shown to work.</summary>
    ClearedByTrials,
}
