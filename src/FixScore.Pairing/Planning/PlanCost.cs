namespace FixScore.Pairing;

/// <summary>What a plan costs under a belief. Less is better.</summary>
/// <param name="Trials">Expected number of trials, one rebuild each.</param>
/// <param name="MostTrials">Trials in the worst case.</param>
/// <param name="Seconds">Expected seconds at the bench; <c>null</c> when some rebuild has no time.</param>
public sealed record PlanCost(decimal Trials, int MostTrials, decimal? Seconds)
{
    /// <summary>Expected minutes at the bench; <c>null</c> when some rebuild has no time.</summary>
    public decimal? Minutes => Seconds / 60;
}
