namespace FixScore.Analysis.Comparing;

/// <summary>Which weights are thought sensible beside those given.</summary>
public enum WeightSpread
{
    /// <summary>All weights, each as likely as any other.</summary>
    Uniform,

    /// <summary>All weights that keep the order of importance of those given.</summary>
    Ordered,

    /// <summary>Weights around those given.</summary>
    Centred,
}
