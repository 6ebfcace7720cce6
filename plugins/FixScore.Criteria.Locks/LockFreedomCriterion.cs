namespace FixScore.Criteria.Locks;

/// <summary>How free the owner is to open the boot lock, and what it costs: waiting, data, warranty, functions.</summary>
/// <remarks>
/// <para>Counted are trials to <c>unlocked</c>. Points start from how the trial went (option <c>outcomes</c>). Where the lock was
/// opened, days of waiting (<c>waitBands</c>), wiped data (<c>wiping</c>) and a notice that the warranty ends (<c>warranty</c>)
/// are taken off, and after any outcome each lost function, by when it comes back (<c>losses</c>): a level says what is left of
/// the scale when that is the only cost, and what costs take off the best of the scale adds up, down to the lowest. More points
/// are better. Of several trials the worst counts, unless option <c>severalTrials</c> says otherwise.</para>
/// <para>What was not recorded gives the range of all it can be. When a function comes back is unknown where other trials
/// contradict what is recorded (<see cref="Pairing.LockCosts"/>); so, as with swap trials, leaving out one side of a
/// contradiction can narrow the score. What closing the lock again costs is not counted.</para>
/// <para>Without an attempt to open the lock the answer is unknown, whether <c>locks</c> is left out or empty: an empty list says
/// that no trial was made, not that there is no lock.</para>
/// <para>Source: own judgement, no source. Thread safe.</para>
/// </remarks>
public sealed class LockFreedomCriterion : IDeviceCriterion
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "lock-freedom", 1, "Lock freedom", "what it costs the owner to open the boot lock", "cost", Direction.LessIsBetter,
        "own judgement, no source",
        [
            "locks", "locks[].unit", "locks[].from", "locks[].to", "locks[].outcome", "locks[].waitDays", "locks[].wipesData", "locks[].warrantyNotice",
            "locks[].losses", "locks[].losses[].function", "locks[].losses[].recovers", "swaps", "parts[].role", "parts[].inert", "joints[].integral",
        ],
        LockFreedomOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(DeviceContext context)
    {
        var facts = LockFreedomFacts.Of(context.Case);
        var reasons = new LockFreedomReasons(context.Case);
        if (facts.Openings.IsEmpty) return Outcome.Unknown(reasons.AnyTrial());
        var openings = facts.Openings.Select(each => (Facts: each, Points: new OpeningPoints(context, each))).ToArray();
        return Outcome.Scored(
            Together(context.Get(LockFreedomOptions.Several), [.. openings.Select(each => each.Points.Total)]),
            [.. openings.SelectMany(each => reasons.Of(each.Facts, each.Points))])
            with { Missing = [.. facts.Openings.SelectMany(reasons.MissingOf)] };
    }

    static Interval Together(SeveralTrials several, Interval[] totals) => several switch
    {
        SeveralTrials.Worst => new(totals.Min(each => each.Low), totals.Min(each => each.High)),
        SeveralTrials.Best => new(totals.Max(each => each.Low), totals.Max(each => each.High)),
        _ => Interval.HullOf(totals)!.Value,
    };
}
