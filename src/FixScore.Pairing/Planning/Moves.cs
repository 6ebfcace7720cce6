namespace FixScore.Pairing.Planning;

/// <summary>Seconds of rebuilds by the set of candidates that change place, each asked for once.</summary>
sealed class Moves(TieBelief belief, IRebuildCosts costs)
{
    readonly Dictionary<ulong, decimal?> known = new() { [0] = 0 };

    public decimal? Seconds(ulong moved) =>
        known.TryGetValue(moved, out var seconds) ? seconds
            : known[moved] = costs.SecondsToExchange([.. moved.Members().Select(each => belief.Candidates[each].Id)]);

    /// <summary>No rebuild takes less than to move the quickest candidate.</summary>
    public decimal Least(ulong open) => open.Members().Min(each => Seconds(Masks.Bit(each))) ?? 0;
}
