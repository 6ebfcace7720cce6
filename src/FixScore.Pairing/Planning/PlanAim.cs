namespace FixScore.Pairing.Planning;

/// <summary>What a plan is to be least in: how a trial adds to it, and what it cannot be below.</summary>
abstract class PlanAim(Weights weights)
{
    // Above what any plan costs, below what a division by a probability would overflow.
    const decimal Unlimited = 1_000_000_000_000;

    protected Weights Weights => weights;

    /// <summary>Whether it matters which parts are foreign when a trial begins.</summary>
    public virtual bool DependsOnHeld => false;

    public abstract decimal Step(ulong held, ulong trial);

    public virtual decimal Join(decimal cleanProbability, decimal clean, decimal flagged) =>
        cleanProbability * clean + (1 - cleanProbability) * flagged;

    /// <summary>What one outcome may cost at most, when both together are to stay below a limit and the other costs so much.</summary>
    public virtual decimal Share(decimal probability, decimal limit, decimal other) =>
        limit > Unlimited ? decimal.MaxValue : (limit - (1 - probability) * other) / probability;

    public virtual decimal Bound(Knowledge knowledge) => knowledge.IsSettled ? 0 : Math.Max(1, Weights.LeastTrials(knowledge));
}

/// <summary>Fewest expected rebuilds.</summary>
sealed class FewestRebuilds(Weights weights) : PlanAim(weights)
{
    public override decimal Step(ulong held, ulong trial) => 1;
}

/// <summary>Fewest rebuilds at worst. Its weights must count sets.</summary>
sealed class FewestAtWorst(Weights weights) : PlanAim(weights)
{
    // Far above what rounding leaves of a logarithm, far below what one more set adds.
    const decimal Rounding = 0.000000000001m;

    public override decimal Step(ulong held, ulong trial) => 1;

    public override decimal Join(decimal cleanProbability, decimal clean, decimal flagged) => Math.Max(clean, flagged);

    public override decimal Share(decimal probability, decimal limit, decimal other) => limit;

    public override decimal Bound(Knowledge knowledge) => knowledge.IsSettled ? 0 : decimal.Ceiling(Weights.Entropy(knowledge) - Rounding);
}

/// <summary>Least expected seconds at the bench.</summary>
sealed class LeastSeconds(Weights weights, Moves moves) : PlanAim(weights)
{
    public override bool DependsOnHeld => true;

    public override decimal Step(ulong held, ulong trial) => moves.Seconds(held ^ trial)!.Value;

    public override decimal Bound(Knowledge knowledge) => knowledge.IsSettled ? 0 : base.Bound(knowledge) * moves.Least(knowledge.Open);
}
