namespace FixScore.Pairing.Planning;

/// <summary>Where an outcome leads.</summary>
/// <param name="Knowledge">What is known then.</param>
/// <param name="Held">Which candidates that are not cleared are foreign then; cleared ones may stay where they are.</param>
/// <param name="Tied">What has become known to be tied.</param>
/// <param name="Cleared">What has become known to be free.</param>
readonly record struct After(Knowledge Knowledge, ulong Held, ulong Tied, ulong Cleared)
{
    public static After Clean(Knowledge before, ulong trial) => Of(before, before.Cleared(trial), 0);

    public static After Flagged(Knowledge before, ulong trial) => Of(before, before.Flagged(trial), trial);

    static After Of(Knowledge before, Reduced reduced, ulong held) => new(
        reduced.Knowledge, held & (reduced.Knowledge.Open | reduced.Tied), reduced.Tied, before.Open & ~reduced.Knowledge.Open & ~reduced.Tied);
}
