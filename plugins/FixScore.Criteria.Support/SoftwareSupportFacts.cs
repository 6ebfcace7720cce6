using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Support;

/// <summary>Years of one kind of update.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Years">The years recorded; <c>null</c> when unknown.</param>
sealed record UpdateYears(string Kind, Quantity? Years);

/// <summary>For how long updates are promised.</summary>
/// <param name="Kinds">The kinds asked for, each once, in the order of the profile.</param>
/// <param name="IsRecorded">Whether the record says anything of support.</param>
/// <param name="CountedFrom">The event the recorded years count from.</param>
/// <param name="Asked">The event they must count from; <c>null</c> when any will do.</param>
sealed record SoftwareSupportFacts(ImmutableArray<UpdateYears> Kinds, bool IsRecorded, OneOf<CountedFrom> CountedFrom, CountedFrom? Asked)
{
    /// <summary>Stands for no upper end.</summary>
    public const decimal Endless = decimal.MaxValue;

    public bool IsUnknown => Kinds.All(kind => kind.Years is null);

    /// <summary>Whether the years surely count from the event asked for.</summary>
    public bool IsCountedAsAsked => Asked is not { } asked || CountedFrom.Is(asked);

    /// <summary>Years of the shortest kind, in so far as recorded.</summary>
    public Interval Recorded
    {
        get
        {
            Interval[] years = [.. Kinds.Select(kind => (kind.Years ?? default).Within(0, Endless))];
            return new(years.Min(each => each.Low), years.Min(each => each.High));
        }
    }

    /// <summary>Years of the shortest kind from the event asked for: anything when they count from another.</summary>
    public Interval Years => IsCountedAsAsked ? Recorded : new(0, Endless);

    public static SoftwareSupportFacts Of(Records.Support? support, ImmutableArray<string> kinds, SupportStart start) => new(
        [.. kinds.Distinct(StringComparer.Ordinal).Select(kind => new UpdateYears(kind, YearsOf(support, kind)))],
        support is not null, support?.CountedFrom ?? default, start.Event());

    static Quantity? YearsOf(Records.Support? support, string kind) => kind switch
    {
        "security" => support?.SecurityUpdateYears,
        "corrective" => support?.CorrectiveUpdateYears,
        "functionality" => support?.FunctionalityUpdateYears,
        _ => null,
    };
}
