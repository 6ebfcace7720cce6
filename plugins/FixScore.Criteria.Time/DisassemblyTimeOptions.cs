using System.Collections.Immutable;

namespace FixScore.Criteria.Time;

/// <summary>What becomes of waiting with hands free; the words of option <c>waiting</c>.</summary>
enum Waiting
{
    Count,
    LeaveOut,
    LeaveOutRecorded,
}

/// <summary>What the seconds are made of; the words of option <c>basis</c>.</summary>
enum Basis
{
    Observed,
    Estimated,
}

/// <summary>Options of <see cref="DisassemblyTimeCriterion"/>. The default points are own judgement, no source.</summary>
static class DisassemblyTimeOptions
{
    public static readonly Option<Bands> Bands = Options.Bands(
        "bands", FixScore.Bands.Linear((120, 1m), (1800, 0m)), "s", "Points for the seconds it takes to free the part.");

    public static readonly Option<Waiting> Waiting = Options.Choice(
        "waiting", Time.Waiting.Count,
        "Whether waiting with hands free, such as for heat, counts as time. leave-out takes an unrecorded wait as anything up to the whole operation, leave-out-recorded as none.");

    public static readonly Option<Basis> Basis = Options.Choice(
        "basis", Time.Basis.Observed,
        "Whether seconds are those observed, or estimated from a table of work measurement that is partly from memory. The two are never added together.");

    public static ImmutableArray<Option> All { get; } = [Bands, Waiting, Basis, Options.NoLevel];
}
