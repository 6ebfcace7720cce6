using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore;

/// <summary>Named legal requirements checked against a record: a screening aid, never legal advice.</summary>
/// <remarks>Immutable and thread safe. The date that decides what applies is handed in, never read from a clock. Failures as for <see cref="ICriterion"/>.</remarks>
public interface IRequirementSet
{
    /// <summary>What the set says of itself. The same object at every call.</summary>
    RequirementInfo Info { get; }

    /// <summary>A finding for each requirement of the set.</summary>
    IEnumerable<Finding> Check(RequirementContext context);
}

/// <summary>What a set of requirements says of itself.</summary>
/// <param name="Id">Names the set, a slug.</param>
/// <param name="RuleVersion">Raised whenever the same record may give other findings; from 1.</param>
/// <param name="Title">The name people read.</param>
/// <param name="Source">The law.</param>
/// <param name="Caution">What the findings are not.</param>
/// <param name="Options">Options of the set.</param>
public sealed record RequirementInfo(
    string Id, int RuleVersion, string Title, string Source, string Caution, ImmutableArray<Option> Options);

/// <summary>What a set of requirements is handed.</summary>
/// <param name="source">The case.</param>
/// <param name="date">The day for which the law is asked.</param>
/// <param name="options">Values of the set's options.</param>
/// <param name="cancellation">Cancels the whole run.</param>
public sealed class RequirementContext(TeardownCase source, DateOnly date, OptionValues options, CancellationToken cancellation = default)
{
    /// <summary>The record and what is derived from it.</summary>
    public TeardownCase Case { get; } = source;

    /// <summary>The day for which the law is asked.</summary>
    public DateOnly Date { get; } = date;

    /// <summary>Cancels the whole run.</summary>
    public CancellationToken Cancellation { get; } = cancellation;

    /// <summary>The value of an option.</summary>
    /// <exception cref="ArgumentException">The set did not declare the option.</exception>
    public T Get<T>(Option<T> option) where T : notnull => options.Get(option);
}

/// <summary>Whether a requirement is met, as far as a record can tell.</summary>
public enum FindingStatus
{
    /// <summary>Met.</summary>
    Met,

    /// <summary>Not met.</summary>
    NotMet,

    /// <summary>The record cannot tell.</summary>
    Unknown,

    /// <summary>The requirement does not apply.</summary>
    NotApplicable,
}

/// <summary>The answer to one requirement.</summary>
/// <param name="Rule">Names the requirement, a slug.</param>
/// <param name="Article">Where it stands in the law.</param>
/// <param name="Status">The answer.</param>
/// <param name="Why">What in the record decides it.</param>
public sealed record Finding(string Rule, string Article, FindingStatus Status, Reason Why);

/// <summary>A check of records that needs derived facts; registered, so that the kernel needs none of them.</summary>
/// <remarks>Immutable and thread safe. Called only with records that passed the kernel's own checks. Failures as for <see cref="ICriterion"/>.</remarks>
public interface IRecordCheck
{
    /// <summary>Names the check, a slug.</summary>
    string Id { get; }

    /// <summary>The problems found; none when all is well.</summary>
    IEnumerable<Problem> Check(TeardownCase source);
}
