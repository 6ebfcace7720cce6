namespace FixScore.Pairing;

/// <summary>Which plan of trials is asked for.</summary>
/// <param name="Context">The context to make the trials in; <c>null</c> for the usual one, see <see cref="PlanContexts"/>.</param>
/// <param name="Objective">What it is to be least in.</param>
/// <param name="AtMost">How many of the open candidates are believed to be tied at most; <c>null</c> for no limit.</param>
/// <param name="Priors">How probable ties are; <c>null</c> for the built-in guesses.</param>
/// <param name="Effort">The most trials that the search may weigh.</param>
public sealed record PlanQuery(
    SwapContext? Context = null, PlanObjective Objective = PlanObjective.Rebuilds, int? AtMost = null, TiePriors? Priors = null, int Effort = AdaptivePlan.UsualEffort);
