using System.Collections.Immutable;

namespace FixScore;

/// <summary>What kind of answer a criterion gave.</summary>
public enum OutcomeKind
{
    /// <summary>A score, exact or an interval.</summary>
    Scored,

    /// <summary>Nothing relevant was observed.</summary>
    Unknown,

    /// <summary>The question does not arise for this device or part.</summary>
    NotApplicable,
}

/// <summary>A criterion's answer.</summary>
/// <remarks>
/// A score is an interval inside the scale it was asked on. <see cref="OutcomeKind.Unknown"/> is the only kind that a
/// profile's <c>unknown: skip</c> skips: when something was observed, answer with an interval instead. Immutable.
/// </remarks>
public sealed record Outcome
{
    Outcome() { }

    /// <summary>The kind of answer.</summary>
    public OutcomeKind Kind { get; private init; }

    /// <summary>Points, for <see cref="OutcomeKind.Scored"/>; [0, 0] otherwise.</summary>
    public Interval Score { get; private init; }

    /// <summary>What was observed and which rule made points of it.</summary>
    public ImmutableArray<Reason> Reasons { get; private init; } = [];

    /// <summary>Observations that would narrow the score.</summary>
    public ImmutableArray<Missing> Missing { get; init; } = [];

    /// <summary>A score with its reasons.</summary>
    public static Outcome Scored(Interval score, params ImmutableArray<Reason> reasons) =>
        new() { Kind = OutcomeKind.Scored, Score = score, Reasons = reasons };

    /// <summary>Nothing relevant was observed; says what is missing.</summary>
    public static Outcome Unknown(params ImmutableArray<Missing> missing) =>
        new() { Kind = OutcomeKind.Unknown, Missing = missing };

    /// <summary>The question does not arise; says why.</summary>
    public static Outcome NotApplicable(Reason why) =>
        new() { Kind = OutcomeKind.NotApplicable, Reasons = [why] };
}

/// <summary>An observation that would narrow a score.</summary>
/// <param name="At">The entry that lacks it.</param>
/// <param name="What">The member or observation that is missing, in a phrase.</param>
public sealed record Missing(Pointer At, string What);
