using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Adhesives;

/// <summary>What it takes to open a bond, without points.</summary>
abstract record Effort
{
    /// <summary>Nothing is needed.</summary>
    public static Effort None { get; } = new Together([]);

    /// <summary>One means, used in an operation.</summary>
    /// <param name="Means">The means.</param>
    /// <param name="By">The operation; <c>null</c> when none was recorded.</param>
    /// <param name="HeatC">Degrees Celsius, for heat; <c>null</c> when not observed.</param>
    public sealed record Act(Means Means, Operation? By, Interval? HeatC = null) : Effort;

    /// <summary>All of these are needed: the harshest counts.</summary>
    public sealed record Together(ImmutableArray<Effort> Items) : Effort;

    /// <summary>Any of these will do: the gentlest counts.</summary>
    public sealed record Choice(ImmutableArray<Effort> Items) : Effort;

    /// <summary>It is one of these, which one was not observed.</summary>
    public sealed record Unclear(ImmutableArray<Effort> Items) : Effort;

    /// <summary>The acts of all recorded ways, without those that are only possible.</summary>
    public IEnumerable<Act> Recorded => this switch
    {
        Act act => [act],
        Together together => together.Items.SelectMany(item => item.Recorded),
        Choice choice => choice.Items.SelectMany(item => item.Recorded),
        _ => [],
    };

    /// <summary>Whether there is no way but through damage.</summary>
    public bool OnlyDamage => this switch
    {
        Act act => act.Means == Means.Damage,
        Together together => together.Items.Any(item => item.OnlyDamage),
        Choice choice => choice.Items.All(item => item.OnlyDamage),
        Unclear unclear => unclear.Items.All(item => item.OnlyDamage),
        _ => false,
    };
}
