using System.Collections.Immutable;

namespace FixScore;

/// <summary>A node of the tree: a <see cref="GroupNode"/> or a <see cref="LeafNode"/>.</summary>
public abstract record ProfileNode
{
    private protected ProfileNode() { }

    /// <summary>The id, unique in the profile.</summary>
    public required string Id { get; init; }

    /// <summary>The name people read; <c>null</c> to use the criterion's title or the id.</summary>
    public string? Title { get; init; }

    /// <summary>Weight among its siblings, above 0; <c>null</c> at the root and for nodes that only gates look at.</summary>
    public decimal? Weight { get; init; }

    /// <summary>Why it is there and weighs what it does.</summary>
    public string? Note { get; init; }

    /// <summary>Rounding of the node's value before it is used anywhere; <c>null</c> for none.</summary>
    public Carry? Carry { get; init; }

    /// <summary>The scale of the node's value: its own, or the one of what is above it.</summary>
    public required Scale Scale { get; init; }

    /// <summary>Whether only gates look at it: no weight, no contribution.</summary>
    public bool GateOnly { get; init; }

    /// <summary>Over which parts it is spread; <c>null</c> for none.</summary>
    public Over? Over { get; init; }

    /// <summary>The node and all below it, depth first.</summary>
    public abstract IEnumerable<ProfileNode> SelfAndBelow();
}

/// <summary>A node that adds up others.</summary>
public sealed record GroupNode : ProfileNode
{
    /// <summary>How it adds up.</summary>
    public required Aggregate Aggregate { get; init; }

    /// <summary>What it adds up; at least one.</summary>
    public required ImmutableArray<ProfileNode> Of { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<ProfileNode> SelfAndBelow() => Of.SelectMany(node => node.SelfAndBelow()).Prepend(this);
}

/// <summary>A node that asks a criterion.</summary>
public sealed record LeafNode : ProfileNode
{
    /// <summary>The criterion and the plugin it came from.</summary>
    public required Installed<ICriterion> Criterion { get; init; }

    /// <summary>Values of its options.</summary>
    public required OptionValues Options { get; init; }

    /// <summary>What an unknown outcome counts for.</summary>
    public UnknownPolicy Unknown { get; init; }

    /// <summary>What an outcome that is not applicable counts for.</summary>
    public NotApplicablePolicy NotApplicable { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<ProfileNode> SelfAndBelow() => [this];
}

/// <summary>Rounding of a node's value.</summary>
/// <param name="Decimals">Decimals kept.</param>
/// <param name="Rounding">How.</param>
public sealed record Carry(int Decimals, RoundingMode Rounding);

/// <summary>How a group adds up.</summary>
public enum Aggregate
{
    /// <summary>Sum of weight times score, over the sum of weights.</summary>
    WeightedArithmetic,

    /// <summary>Product of scores, each to the power of its share of the weights.</summary>
    WeightedGeometric,

    /// <summary>Sum of weights over the sum of weight by score; a score of 0 gives 0.</summary>
    WeightedHarmonic,

    /// <summary>The lowest score; weights are ignored.</summary>
    Minimum,

    /// <summary>Sum of weight times score; weights are factors.</summary>
    Sum,
}

/// <summary>What an unknown outcome counts for.</summary>
public enum UnknownPolicy
{
    /// <summary>The whole scale.</summary>
    Interval,

    /// <summary>The lowest of the scale.</summary>
    Worst,

    /// <summary>It is left out.</summary>
    Skip,
}

/// <summary>What an outcome that is not applicable counts for.</summary>
public enum NotApplicablePolicy
{
    /// <summary>It is left out.</summary>
    Skip,

    /// <summary>The highest of the scale.</summary>
    Top,
}
