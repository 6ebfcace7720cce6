using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Locks;

/// <summary>Which of several trials counts; the words of option <c>severalTrials</c>.</summary>
enum SeveralTrials
{
    Worst,
    Best,
    Any,
}

/// <summary>Options of <see cref="LockFreedomCriterion"/>. The default points are own judgement, no source.</summary>
static class LockFreedomOptions
{
    public const string Yes = "yes";
    public const string No = "no";

    public static readonly Option<Levels> Outcomes = Options.Levels(
        "outcomes",
        Levels.Of((Word.Of(LockOutcome.Done), 1m), (Word.Of(LockOutcome.Failed), 0.2m), (Word.Of(LockOutcome.RefusedByMaker), 0m)),
        "Points for how the attempt to open the lock went; what it cost is taken off them.");

    public static readonly Option<Bands> WaitBands = Options.Bands(
        "waitBands", Bands.Linear((0, 1m), (7, 0.9m), (30, 0.5m), (180, 0.2m)), "d", "Points left when days of waiting are the only cost.");

    public static readonly Option<Levels> Wiping = Options.Levels(
        "wiping", Levels.Of((No, 1m), (Yes, 0.9m)), "Points left when the only cost is whether the data are wiped.");

    public static readonly Option<Levels> Warranty = Options.Levels(
        "warranty", Levels.Of((No, 1m), (Yes, 0.7m)), "Points left when the only cost is whether the maker says that the warranty ends.");

    public static readonly Option<Levels> Losses = Options.Levels(
        "losses",
        Levels.Of(
            (Word.Of(Recovery.OnRelock), 0.95m), (Word.Of(Recovery.OnReset), 0.9m), (Word.Of(Recovery.OnService), 0.85m), (Word.Of(Recovery.Never), 0.8m)),
        "Points left when one lost function is the only cost, by when it comes back; each lost function counts.");

    public static readonly Option<SeveralTrials> Several = Options.Choice(
        "severalTrials", SeveralTrials.Worst, "Whether the worst or the best of several trials counts, or the score is the range over any of them.");

    public static ImmutableArray<Option> All { get; } = [Outcomes, WaitBands, Wiping, Warranty, Losses, Several, Options.NoLevel];
}
