using System.Collections.Immutable;

namespace FixScore.Criteria.Cost;

/// <summary>What becomes of waiting with hands free; the words of option <c>waiting</c>.</summary>
enum Waiting
{
    Count,
    LeaveOut,
    LeaveOutRecorded,
}

/// <summary>Options of <see cref="RepairCostRatioCriterion"/>. The default points and the default rate are own judgement, no source.</summary>
static class RepairCostRatioOptions
{
    public static readonly Option<Bands> Bands = Options.Bands(
        "bands", FixScore.Bands.Linear((0.1m, 1m), (0.5m, 0m)), "share", "Points for the cost of replacing the part as a share of the price of the device.");

    public static readonly Option<decimal> LabourRate = Options.Number(
        "labourRate", 40, 0, 10_000, "currency/h", "What an hour of labour costs, in the currency of the device's price and on the same tax basis.");

    public static readonly Option<decimal> Reassembly = Options.Number(
        "reassembly", 0, 0, 10, "1",
        "Where an operation lacks reassemblySeconds, putting together is assumed to take this many times the seconds of taking apart; with 0 it is unknown.");

    public static readonly Option<Waiting> Waiting = Options.Choice(
        "waiting", Cost.Waiting.LeaveOut,
        "Whether waiting with hands free, such as for heat, is paid for. leave-out takes an unrecorded wait as anything up to the whole operation, leave-out-recorded as none.");

    public static ImmutableArray<Option> All { get; } = [Bands, LabourRate, Reassembly, Waiting, Options.NoLevel];
}
