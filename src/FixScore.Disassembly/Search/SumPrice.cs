namespace FixScore.Disassembly.Search;

/// <summary>Operations that cost the same whenever they are done: one each, or their seconds.</summary>
sealed class SumPrice : Price
{
    readonly Int128[] weights;
    readonly (ulong[] By, Int128 Least)[] landmarks;

    /// <summary>Prices operations.</summary>
    /// <param name="weights">Cost of each; none is negative.</param>
    /// <param name="landmarks">What every way must do.</param>
    public SumPrice(Int128[] weights, Landmarks landmarks)
    {
        this.weights = weights;
        this.landmarks = [.. landmarks.All.Select(by => (by, Members(by).Min(each => weights[each])))];
        Most = weights.Aggregate(Int128.Zero, (sum, each) => sum + each);
    }

    public override int Start => 0;

    public override Int128 Most { get; }

    public override int Options(int operation) => 1;

    public override (Int128 Cost, int Bench) Of(int bench, int operation, int option) => (weights[operation], 0);

    public override bool IsBestNow(int bench, int operation, bool openers, out int option)
    {
        option = 0;
        return true;
    }

    public override Int128 Least(ReadOnlySpan<ulong> done, int bench)
    {
        var least = Int128.Zero;
        foreach (var (by, weight) in landmarks)
            if (!Masks.Meet(by, done)) least += weight;
        return least;
    }

    IEnumerable<int> Members(ulong[] by) => Enumerable.Range(0, weights.Length).Where(each => Masks.Has(by, each));
}
