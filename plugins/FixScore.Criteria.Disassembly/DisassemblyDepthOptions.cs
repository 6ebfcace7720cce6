using System.Collections.Immutable;

namespace FixScore.Criteria.Disassembly;

/// <summary>What is counted; the words of option <c>cost</c>.</summary>
enum DepthCost
{
    Steps,
    Operations,
}

/// <summary>What it means that no demand of the maker was recorded; the words of option <c>serialisedUnknown</c>.</summary>
enum WhenDemandUnknown
{
    Widen,
    None,
}

/// <summary>Options of <see cref="DisassemblyDepthCriterion"/>.</summary>
static class DisassemblyDepthOptions
{
    // Regulation (EU) 2023/1669 Annex IV point 5: 5, 4, 3, 2 points, and 1 for all that is deeper.
    // The last limit is beyond any count, so that depth always has a level.
    public static Option<Bands> Bands { get; } = Options.Bands(
        "bands", FixScore.Bands.AtMost((2, 1m), (5, 0.75m), (10, 0.5m), (15, 0.25m), (1_000_000, 0m)), "steps",
        "Points for the steps to the part, those for the maker's server included. Defaults: Regulation (EU) 2023/1669 Annex IV point 5.");

    public static Option<decimal> NotificationSteps { get; } = Options.Number(
        "notificationSteps", 0, 0, 1000, "steps",
        "Steps added where the maker must be notified of the part's serial number through a server. Regulation (EU) 2023/1669 Annex IV point 5 adds 5.");

    public static Option<decimal> AuthorisationSteps { get; } = Options.Number(
        "authorisationSteps", 0, 0, 1000, "steps",
        "Steps added where the maker must authorise the part's serial number through a server. Regulation (EU) 2023/1669 Annex IV point 5 adds 5.");

    public static Option<WhenDemandUnknown> SerialisedUnknown { get; } = Options.Choice(
        "serialisedUnknown", WhenDemandUnknown.Widen, "Whether a demand of the maker that was not recorded may add its steps, or adds none.");

    public static Option<DepthCost> Cost { get; } = Options.Choice(
        "cost", DepthCost.Steps, "Whether steps are counted, each ending with a removal or a change of tool, or operations.");

    public static ImmutableArray<Option> All { get; } =
        [Bands, WayOptions.Route, WayOptions.FirstTool, NotificationSteps, AuthorisationSteps, SerialisedUnknown, Cost, Options.NoLevel];
}
