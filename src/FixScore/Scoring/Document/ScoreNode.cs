using System.Collections.Immutable;

namespace FixScore;

/// <summary>One line of a score: a node, or what <c>over</c> makes of it for a role or a part.</summary>
public sealed record ScoreNode
{
    /// <summary>Id of the profile's node.</summary>
    public required string Id { get; init; }

    /// <summary>Ids from the root, then role and part where the node is spread over parts; unique.</summary>
    public required string Path { get; init; }

    /// <summary>The name people read.</summary>
    public required string Title { get; init; }

    /// <summary>Weight as the profile states it; <c>null</c> where there is none.</summary>
    public required decimal? Weight { get; init; }

    /// <summary>Share of the total's weight that this line has; 0 when it was left out.</summary>
    public required decimal Share { get; init; }

    /// <summary>Points.</summary>
    public required Interval Value { get; init; }

    /// <summary>Points as shown.</summary>
    public required Interval Shown { get; init; }

    /// <summary>Points of the total; <c>null</c> where something above is not linear or the line was left out.</summary>
    public required Ends? Contribution { get; init; }

    /// <summary>How far the low end of the total rises if this line had its maximum; 0 or more.</summary>
    public required decimal Headroom { get; init; }

    /// <summary>The criterion, for leaves.</summary>
    public required CriterionReference? Criterion { get; init; }

    /// <summary>Options in force, for leaves.</summary>
    public required OptionValues? Options { get; init; }

    /// <summary>Why.</summary>
    public required ImmutableArray<ScoreReason> Reasons { get; init; }

    /// <summary>What would narrow it.</summary>
    public required ImmutableArray<Missing> Missing { get; init; }
}

/// <summary>Names a criterion and the version of its rule.</summary>
/// <param name="Id">The id.</param>
/// <param name="RuleVersion">The rule's version.</param>
public sealed record CriterionReference(string Id, int RuleVersion);

/// <summary>Why: a code, the facts by name, the text made of them, and where they stand in the record.</summary>
/// <param name="Code">The code.</param>
/// <param name="Values">The facts.</param>
/// <param name="Text">Text in the invariant culture.</param>
/// <param name="Pointers">Entries of the record.</param>
/// <param name="Points">Points that this reason alone stands for; <c>null</c> for none.</param>
public sealed record ScoreReason(
    string Code, ImmutableArray<NamedValue> Values, string Text, ImmutableArray<Pointer> Pointers, Interval? Points)
{
    internal static ScoreReason From(Reason reason) => new(reason.Code, reason.Values, reason.Text, reason.Pointers, reason.Points);
}

/// <summary>A criterion that failed.</summary>
/// <param name="Node">Path of the node.</param>
/// <param name="Criterion">Id of the criterion.</param>
/// <param name="Plugin">Id of its plugin.</param>
/// <param name="Code">How it failed: <c>criterion-threw</c>, <c>score-left-scale</c> or <c>outcome-malformed</c> (an answer that no document could hold: a list or text left out, a name twice, half of a surrogate pair).</param>
/// <param name="Values">The facts.</param>
public sealed record ScoreFault(string Node, string Criterion, string Plugin, string Code, ImmutableArray<NamedValue> Values);

/// <summary>A gate that closed.</summary>
/// <param name="Id">The id.</param>
/// <param name="Cap">The most the total can be.</param>
/// <param name="Reason">Why.</param>
/// <param name="Ends">Which ends of the total it caps.</param>
public sealed record ScoreGate(string Id, decimal Cap, string Reason, GateEnds Ends);

/// <summary>Which ends of the total a gate caps.</summary>
public enum GateEnds
{
    /// <summary>Both: it closes whatever the open observations turn out to be.</summary>
    Both,

    /// <summary>Only the low end: it may close.</summary>
    Low,
}

/// <summary>A point on which the source is silent.</summary>
/// <param name="Id">The id.</param>
/// <param name="Point">What is left open.</param>
/// <param name="Taken">The reading taken.</param>
/// <param name="Otherwise">The totals under other readings.</param>
/// <param name="Decisive">Whether another reading changes the class or, without classes, the total as shown.</param>
public sealed record ScoreReading(string Id, string Point, string Taken, ImmutableArray<ScoreOtherwise> Otherwise, bool Decisive);

/// <summary>The total under another reading.</summary>
/// <param name="Text">The reading.</param>
/// <param name="Total">The exact total.</param>
/// <param name="Class">The classes of both ends; <c>null</c> when the profile has none.</param>
public sealed record ScoreOtherwise(string Text, Interval Total, ClassRange? Class);
