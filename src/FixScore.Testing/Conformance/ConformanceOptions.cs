using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

/// <summary>On what a criterion is tried. The defaults try it on all of <see cref="SampleRecords"/> and on generated records.</summary>
public sealed record ConformanceOptions
{
    /// <summary>Records to try; add some with what the criterion reads, above all when it reads observations.</summary>
    public ImmutableArray<TeardownRecord> Samples { get; init; } = SampleRecords.All;

    /// <summary>How many generated records are tried besides; 0 for none.</summary>
    public int Generated { get; init; } = 12;

    /// <summary>Seed of the first generated record.</summary>
    public int FirstSeed { get; init; } = 1;

    /// <summary>Scales to answer on. The first one serves the laws that need only one.</summary>
    public ImmutableArray<Scale> Scales { get; init; } = [new(0, 100), new(1, 5), new(-1, 1)];

    /// <summary>Pairs of records of which the second is surely no worse.</summary>
    public ImmutableArray<MonotonePair> Pairs { get; init; } = [];

    /// <summary>Codes of <see cref="ConformanceCodes"/> that are not reported; say why beside it.</summary>
    public ImmutableArray<string> Except { get; init; } = [];
}

/// <summary>Two records of which the second deserves at least the score of the first. Parts are compared by id.</summary>
/// <param name="Name">What was improved, for the finding.</param>
/// <param name="Worse">The worse record.</param>
/// <param name="Better">The better record.</param>
public sealed record MonotonePair(string Name, TeardownRecord Worse, TeardownRecord Better);
