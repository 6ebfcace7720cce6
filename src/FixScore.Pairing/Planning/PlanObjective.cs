namespace FixScore.Pairing;

/// <summary>What a plan of trials is to be least in.</summary>
public enum PlanObjective
{
    /// <summary>Expected number of trials, each of which asks for one rebuild.</summary>
    Rebuilds,

    /// <summary>Expected minutes at the bench.</summary>
    Minutes,

    /// <summary>Number of trials in the worst case.</summary>
    WorstCase,
}
