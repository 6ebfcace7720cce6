using FixScore.Records;

namespace FixScore.Testing;

/// <summary>Draws valid records from seeds: parts in a stack, joints, operations, trials, documents and spares, with ranges and unknowns.</summary>
/// <remarks>
/// The same seed gives the same record on every machine. Trials of one record never contradict each other, and no
/// operation waits for itself. Another version of this package may draw other records. Thread safe.
/// </remarks>
public static class RecordGenerator
{
    /// <summary>The record of a seed. Its id is <c>generated-</c> and the seed, a negative seed taken modulo 2^32.</summary>
    public static TeardownRecord Generate(int seed)
    {
        var dice = new Dice(seed);
        var plan = Plan.Draw(dice);
        var builder = new RecordBuilder(FormattableString.Invariant($"generated-{unchecked((uint)seed)}"));
        GeneratedParts.Add(builder, plan, dice);
        if (dice.Chance(90)) GeneratedJoints.Add(builder, plan, dice);
        if (dice.Chance(90)) GeneratedWork.Add(builder, plan, builder.Current, dice);
        if (dice.Chance(80)) GeneratedTrials.Add(builder, plan, dice);
        if (dice.Chance(90)) GeneratedSupply.Add(builder, plan, builder.Current, dice);
        return builder.Build();
    }

    /// <summary>The records of <paramref name="count"/> seeds from <paramref name="firstSeed"/> on.</summary>
    public static IEnumerable<TeardownRecord> Many(int count, int firstSeed = 1) =>
        Enumerable.Range(firstSeed, count).Select(Generate);
}
