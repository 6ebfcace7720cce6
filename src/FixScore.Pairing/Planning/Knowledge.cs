namespace FixScore.Pairing.Planning;

/// <summary>What is known of the candidates: which are open, which sets hold a tied one, how many more can be tied.</summary>
/// <remarks>
/// Always reduced: no flagged set holds another, none has fewer than two, each open candidate can still be either. So equal
/// knowledge is equal bit by bit. Settled candidates are no part of it: what is believed of the others depends on them only by their number.
/// </remarks>
sealed class Knowledge : IEquatable<Knowledge>
{
    readonly int hash;

    Knowledge(ulong open, ulong[] flags, int least, int most)
    {
        (Open, Flags, Least, Most) = (open, flags, least, most);
        hash = flags.Aggregate(HashCode.Combine(open, least, most), HashCode.Combine);
    }

    public ulong Open { get; }

    /// <summary>Sets of open candidates that each hold a tied one, in rising order.</summary>
    public ulong[] Flags { get; }

    /// <summary>The fewest open candidates that are tied.</summary>
    public int Least { get; }

    /// <summary>The most open candidates that are tied.</summary>
    public int Most { get; }

    public bool IsSettled => Open == 0;

    /// <summary>What a clean trial of some open candidates leaves.</summary>
    public Reduced Cleared(ulong trial) => Reduction.Of(Open & ~trial, [.. Flags.Select(flag => flag & ~trial)], Least, Most);

    /// <summary>What a flagged trial of some open candidates leaves.</summary>
    public Reduced Flagged(ulong trial) => Reduction.Of(Open, [.. Flags, trial], Least, Most);

    public static Knowledge Of(ulong open, ulong[] flags, int least, int most) =>
        new(open, flags, Math.Max(least, 0), Math.Min(most, open.Size()));

    public bool Equals(Knowledge? other) =>
        other is not null && hash == other.hash && Open == other.Open && Least == other.Least && Most == other.Most && Flags.AsSpan().SequenceEqual(other.Flags);

    public override bool Equals(object? obj) => Equals(obj as Knowledge);

    public override int GetHashCode() => hash;
}

/// <summary>Reduced knowledge, with what became settled on the way.</summary>
readonly record struct Reduced(Knowledge Knowledge, ulong Tied);
