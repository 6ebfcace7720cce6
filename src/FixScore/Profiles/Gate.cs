using System.Collections.Immutable;

namespace FixScore;

/// <summary>A limit that caps the total.</summary>
/// <param name="Id">The id.</param>
/// <param name="When">When it closes.</param>
/// <param name="Cap">The most the total can then be.</param>
/// <param name="Reason">Why, for people.</param>
public sealed record Gate(string Id, GateCondition When, decimal Cap, string Reason);

/// <summary>When a gate closes.</summary>
/// <param name="Node">Id of the node looked at.</param>
/// <param name="Part">The role whose value counts, after <see cref="Over.Instances"/>; <c>null</c> for the node's own value.</param>
/// <param name="Limit">The limit.</param>
/// <param name="Inclusive">Whether the limit itself closes the gate (<c>atMost</c>) or only what is below it.</param>
public sealed record GateCondition(string Node, string? Part, decimal Limit, bool Inclusive)
{
    /// <summary>Whether a value closes the gate.</summary>
    public bool ClosesAt(decimal value) => Inclusive ? value <= Limit : value < Limit;
}

/// <summary>A class of scores.</summary>
/// <param name="Label">What it is called.</param>
/// <param name="From">The least score in it.</param>
public sealed record ScoreClass(string Label, decimal From);

/// <summary>Which value decides the class.</summary>
public enum ClassBasis
{
    /// <summary>The exact total.</summary>
    Exact,

    /// <summary>The total as shown.</summary>
    Shown,
}

/// <summary>A point on which the source is silent, and how it was read.</summary>
/// <param name="Id">The id.</param>
/// <param name="Point">What is left open.</param>
/// <param name="Source">Where it is left open.</param>
/// <param name="Taken">The reading taken.</param>
/// <param name="Otherwise">Other readings.</param>
public sealed record SourceReading(string Id, string Point, string Source, string Taken, ImmutableArray<OtherReading> Otherwise);

/// <summary>Another reading, as the profile it would make.</summary>
/// <param name="Text">The reading.</param>
/// <param name="Profile">The profile under that reading; without readings of its own.</param>
public sealed record OtherReading(string Text, Profile Profile);
