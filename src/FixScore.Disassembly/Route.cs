using System.Collections.Immutable;
using FixScore.Disassembly.Search;

namespace FixScore.Disassembly;

/// <summary>Whether a part can be freed without damage.</summary>
public enum Reachability
{
    /// <summary>It can.</summary>
    Reachable,

    /// <summary>It cannot, or only with damage.</summary>
    Unreachable,

    /// <summary>The record does not tell how the part is held or what undoes what holds it.</summary>
    Unknown,
}

/// <summary>The shortest way to free a part, with proof.</summary>
/// <remarks>
/// <para>A route is a sequence of operations that frees the part's group without damage to anything outside the group. Each
/// operation is done at most once. Among equally short routes the one with fewer operations is taken, then the one whose
/// operations stand first in the record.</para>
/// <para>Work is limited by counted effort. When the limit is met, the best way found is shown with the proven
/// <see cref="LowerBound"/>, and <see cref="IsOptimal"/> is false.</para>
/// <para>Immutable and thread safe. Source of the steps: Regulation (EU) 2023/1669 Annex I (20) and Annex IV point 5;
/// where it is silent the readings of <see cref="RouteQuery"/> decide.</para>
/// </remarks>
public sealed class Route : IFact<Route, RouteQuery>
{
    internal Route(RouteQuery query, Reachability reachability) => (Query, Reachability) = (query, reachability);

    /// <summary>What was asked.</summary>
    public RouteQuery Query { get; }

    /// <summary>Whether the part can be freed without damage.</summary>
    public Reachability Reachability { get; }

    /// <summary>Why it cannot be freed, or why nothing is known; <c>null</c> when it can. Names the joint or operation that is missing.</summary>
    public Reason? Why { get; internal init; }

    /// <summary>Steps of the route, a range when tools are unknown, each end a shortest route of its own; <c>null</c> unless reachable.</summary>
    public Interval? Steps { get; internal init; }

    /// <summary>Number of operations of <see cref="Way"/>; <c>null</c> unless reachable.</summary>
    public int? Operations => Reachability == Reachability.Reachable ? Way!.Stops.Length : null;

    /// <summary>Seconds of <see cref="Way"/>; <c>null</c> when one of its operations has no time, or unless reachable.</summary>
    public Interval? Seconds => Reachability == Reachability.Reachable ? Way!.Seconds : null;

    /// <summary>Whether no shorter route exists, proven. True as well where there is none at all.</summary>
    public bool IsOptimal { get; internal init; } = true;

    /// <summary>No route costs less than this, in the unit of the cost asked for, where seconds are ranges their middle; <c>null</c> unless reachable.</summary>
    public decimal? LowerBound { get; internal init; }

    /// <summary>The route; with unknown tools the one with most steps. The way with least damage when only damage frees the part. <c>null</c> when there is none.</summary>
    public Way? Way { get; internal init; }

    /// <summary>With unknown tools, the route with fewest steps; else <see cref="Way"/>.</summary>
    public Way? LeastWay { get; internal init; }

    /// <summary>Ids of parts and joints that <see cref="Way"/> damages, the target's own group included; in the order of the record.</summary>
    public ImmutableArray<string> Damages { get; internal init; } = [];

    /// <summary>Ids of parts and joints that were damaged on some unit when an operation of <see cref="Way"/> was tried; in the order of the record.</summary>
    public ImmutableArray<string> AtRisk { get; internal init; } = [];

    /// <summary>Ways to the same part that were published or filmed; in the order of the record.</summary>
    public ImmutableArray<RecordedWay> Recorded { get; internal init; } = [];

    /// <summary>The distinct ways the route can be, given what is unknown: one or two, or none.</summary>
    public IEnumerable<Way> Ways => new[] { LeastWay, Way }.OfType<Way>().Distinct();

    /// <summary>Searches the route.</summary>
    /// <exception cref="KeyNotFoundException">No part of the record has such an id.</exception>
    /// <exception cref="ArgumentException">No part is asked for.</exception>
    public static Route From(TeardownCase source, RouteQuery key, CancellationToken cancellation) => RouteFinder.Find(source, key, cancellation);
}

/// <summary>A way to a part that was published or filmed.</summary>
/// <param name="Sequence">The entry of the record.</param>
/// <param name="Way">What it costs.</param>
public sealed record RecordedWay(Records.Sequence Sequence, Way Way);
