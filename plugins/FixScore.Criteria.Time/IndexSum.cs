using FixScore.Records;

namespace FixScore.Criteria.Time;

/// <summary>A sum of indices, as far as it is known.</summary>
/// <param name="Low">The least it can be.</param>
/// <param name="High">The most it can be; <c>null</c> when nothing limits it.</param>
readonly record struct IndexSum(decimal Low, decimal? High)
{
    public static implicit operator IndexSum(decimal exact) => new(exact, exact);

    public static IndexSum operator +(IndexSum a, IndexSum b) => new(a.Low + b.Low, a.High + b.High);

    /// <summary>The same done several times.</summary>
    public IndexSum Times(Quantity count) => new(Low * (count.Min ?? 0), Low == 0 && High == 0 ? 0 : High * count.Max);

    /// <summary>Hundred thousand TMU are one hour; one index stands for ten TMU.</summary>
    public Quantity Seconds => new(BasicMost.SecondsOf(Low), High is { } high ? BasicMost.SecondsOf(high) : null);
}
