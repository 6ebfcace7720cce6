using FixScore.Analysis.Weights.Acceptability;

namespace FixScore.Analysis.Chance;

/// <summary>Draws weights in blocks of <see cref="Lanes.Count"/>, a row of lanes for each criterion. Draw number d is the same whatever block it is made in. Immutable and thread safe.</summary>
/// <remarks>
/// Uniform weights are the gaps between sorted uniform numbers in [0, 1] (Devroye, Non-uniform random variate generation,
/// 1986, chapter V): exact differences of multiples of 2^-53, so they sum to 1. Ordered ones are these, sorted. Weights around
/// others are gamma variates over their sum.
/// </remarks>
sealed class WeightDraws(WeightLaw law, int criteria, RandomCounter random)
{
    /// <summary>Fills a block.</summary>
    /// <param name="first">Number of its first draw.</param>
    /// <param name="weights">Room for a row of lanes for each criterion.</param>
    public void Fill(long first, Span<double> weights)
    {
        if (law.Shapes.Length == 0) Gaps(first, weights);
        else for (var lane = 0; lane < Lanes.Count; lane++) Around(random.Part(first + lane), weights[lane..]);
        if (law.IsOrdered) Fall(weights);
    }

    void Gaps(long first, Span<double> weights)
    {
        unchecked
        {
            var cuts = criteria - 1;
            for (var row = 0; row < cuts; row++)
                for (var lane = 0; lane < Lanes.Count; lane++)
                    weights[(row * Lanes.Count) + lane] = random.Unit(((first + lane) * cuts) + row);
            Lanes.Sort(weights, cuts);
            weights.Slice(cuts * Lanes.Count, Lanes.Count).Fill(1);
            for (var i = (criteria * Lanes.Count) - 1; i >= Lanes.Count; i--) weights[i] -= weights[i - Lanes.Count];
        }
    }

    void Around(RandomCounter part, Span<double> lane)
    {
        var (stream, sum) = (new RandomStream(part), 0.0);
        for (var i = 0; i < criteria; i++)
        {
            var variate = GammaDraw.Of(law.Shapes[i], ref stream);
            lane[i * Lanes.Count] = variate;
            sum += variate;
        }
        // At tiny concentrations all variates can be too small for a double.
        for (var i = 0; i < criteria; i++) lane[i * Lanes.Count] = sum > 0 ? lane[i * Lanes.Count] / sum : 1.0 / criteria;
    }

    void Fall(Span<double> weights)
    {
        Lanes.Sort(weights, criteria);
        for (var (low, high) = (0, criteria - 1); low < high; low++, high--)
            for (var lane = 0; lane < Lanes.Count; lane++)
                (weights[(low * Lanes.Count) + lane], weights[(high * Lanes.Count) + lane]) = (weights[(high * Lanes.Count) + lane], weights[(low * Lanes.Count) + lane]);
    }
}
