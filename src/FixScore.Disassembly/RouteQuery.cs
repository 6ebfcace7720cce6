using System.Collections.Immutable;

namespace FixScore.Disassembly;

/// <summary>What a route is to be shortest in. Less is better.</summary>
public enum RouteCost
{
    /// <summary>Steps: each ends with the removal of a part or with a change of tool.</summary>
    Steps,

    /// <summary>How many operations.</summary>
    Operations,

    /// <summary>Seconds at the bench.</summary>
    Seconds,
}

/// <summary>How the first tool counts that is taken up while a step is open and nothing is in hand; the law is silent.</summary>
public enum FirstTool
{
    /// <summary>It is no change of tool.</summary>
    NoChange,

    /// <summary>It is a change of tool and begins a step.</summary>
    Change,
}

/// <summary>Which route is asked for, and under which rules. Compared by value.</summary>
/// <param name="Parts">Ids of the parts to free; with several, all of them in one go, so that shared work counts once.</param>
/// <param name="Cost">What the route is to be shortest in.</param>
/// <param name="FirstTool">How the first tool counts.</param>
/// <param name="Effort">
/// The most states the search may open where up to <see cref="UsualOperations"/> operations matter; with more it is less, by the
/// cube of their number, for a state then costs more and more parts are asked for. Counted, so that the answer is the same on every machine.
/// </param>
public sealed record RouteQuery(
    ImmutableArray<string> Parts, RouteCost Cost = RouteCost.Steps, FirstTool FirstTool = FirstTool.NoChange, int Effort = RouteQuery.UsualEffort)
{
    /// <summary>The effort unless another is asked for: some seconds of work at most.</summary>
    public const int UsualEffort = 150_000;

    /// <summary>Up to how many operations the effort is taken as it is.</summary>
    public const int UsualOperations = 64;

    /// <summary>A route to one part.</summary>
    public RouteQuery(string part, RouteCost cost = RouteCost.Steps, FirstTool firstTool = FirstTool.NoChange, int effort = UsualEffort)
        : this([part], cost, firstTool, effort) { }

    /// <inheritdoc/>
    public bool Equals(RouteQuery? other) =>
        other is not null && (Cost, FirstTool, Effort) == (other.Cost, other.FirstTool, other.Effort) && Parts.SequenceEqual(other.Parts, StringComparer.Ordinal);

    /// <inheritdoc/>
    public override int GetHashCode() =>
        Parts.Aggregate(HashCode.Combine(Cost, FirstTool, Effort), (hash, part) => HashCode.Combine(hash, part));
}
