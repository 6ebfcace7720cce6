namespace FixScore.Analysis.Chance;

/// <summary>The numbers of a <see cref="RandomCounter"/> one after another. Not thread safe: each draw has its own.</summary>
struct RandomStream(RandomCounter counter)
{
    long _next;

    /// <summary>A number in [0, 1).</summary>
    public double Unit() => counter.Unit(_next++);

    /// <summary>A number in (0, 1), so that its logarithm is finite.</summary>
    public double Open()
    {
        var unit = Unit();
        while (unit == 0) unit = Unit();
        return unit;
    }
}
