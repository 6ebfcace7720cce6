namespace FixScore.Pairing.Planning;

/// <summary>What a plan is to be least in: how a trial adds to it, and what it cannot be below.</summary>
abstract class PlanAim(Weights weights)
{
    protected Weights Weights => weights;

    /// <summary>Whether it matters which parts are foreign when a trial begins.</summary>
    public virtual bool DependsOnHeld => false;

    public abstract decimal Step(ulong held, ulong trial);

    public virtual decimal Join(decimal cleanProbability, decimal clean, decimal flagged) =>
        cleanProbability * clean + (1 - cleanProbability) * flagged;

    public virtual decimal Bound(Knowledge knowledge) => knowledge.IsSettled ? 0 : Math.Max(1, Weights.Entropy(knowledge));
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

    public override decimal Bound(Knowledge knowledge) => decimal.Ceiling(base.Bound(knowledge) - Rounding);
}

/// <summary>Least expected seconds at the bench.</summary>
sealed class LeastSeconds(Weights weights, Moves moves) : PlanAim(weights)
{
    public override bool DependsOnHeld => true;

    public override decimal Step(ulong held, ulong trial) => moves.Seconds(held ^ trial)!.Value;

    public override decimal Bound(Knowledge knowledge) => knowledge.IsSettled ? 0 : base.Bound(knowledge) * moves.Least(knowledge.Open);
}
