namespace FixScore;

/// <summary>A closed interval of exact decimals: everything a value can still be, given what was observed.</summary>
/// <remarks>
/// <para>Equality is by both ends. <c>default</c> is [0, 0]. There is no empty interval. Immutable and thread safe.</para>
/// <para>An interval says nothing about direction: on a scale more is better, elsewhere it depends on what is measured.</para>
/// </remarks>
public readonly record struct Interval
{
    /// <summary>Makes the interval [<paramref name="low"/>, <paramref name="high"/>].</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="low"/> is above <paramref name="high"/>.</exception>
    public Interval(decimal low, decimal high)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(low, high);
        Low = low;
        High = high;
    }

    /// <summary>The least the value can be.</summary>
    public decimal Low { get; }

    /// <summary>The most the value can be.</summary>
    public decimal High { get; }

    /// <summary>Whether both ends are equal: nothing is left open.</summary>
    public bool IsExact => Low == High;

    /// <summary>An exact value is an interval with equal ends.</summary>
    public static implicit operator Interval(decimal exact) => new(exact, exact);

    /// <summary>The smallest interval that holds both.</summary>
    public Interval Hull(Interval other) => new(Math.Min(Low, other.Low), Math.Max(High, other.High));

    /// <summary>Whether <paramref name="value"/> lies between the ends, ends included.</summary>
    public bool Contains(decimal value) => Low <= value && value <= High;

    /// <summary>Whether the whole of <paramref name="other"/> lies inside, ends included.</summary>
    public bool Contains(Interval other) => Low <= other.Low && other.High <= High;

    /// <summary>The least and the most of several intervals; <c>null</c> when there are none.</summary>
    public static Interval? HullOf(IEnumerable<Interval> intervals)
    {
        Interval? hull = null;
        foreach (var each in intervals) hull = hull?.Hull(each) ?? each;
        return hull;
    }
}
