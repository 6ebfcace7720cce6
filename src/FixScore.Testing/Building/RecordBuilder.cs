using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

/// <summary>Builds teardown records for tests: what is not said keeps a default where the format demands a value, else it is unknown.</summary>
/// <remarks>
/// <para>Starts as an invented smartphone with two identical units, <c>unit-a</c> and <c>unit-b</c>. A list that no method
/// adds to stays unrecorded; <c>With(record => record with { Joints = [] })</c> records that there is none.</para>
/// <para>Entries stand in the order in which they were added. Each method that adds an entry takes a last function that
/// may change it. <see cref="Build"/> freezes the builder. Not thread safe.</para>
/// </remarks>
public sealed partial class RecordBuilder
{
    TeardownRecord record;
    bool frozen;

    /// <summary>Starts a record.</summary>
    /// <param name="id">Id of the record, a slug.</param>
    public RecordBuilder(string id = "sample") => record = new()
    {
        Id = id,
        Device = new() { Maker = "Invented Maker", Model = "Sample One", Kind = "smartphone" },
        Assessment = new()
        {
            Assessor = "test bench",
            Date = new(2026, 1, 15),
            Units = [new() { Id = "unit-a", Source = UnitSource.Device }, new() { Id = "unit-b", Source = UnitSource.Device }],
        },
        Parts = [],
    };

    /// <summary>What was built so far.</summary>
    internal TeardownRecord Current => record;

    /// <summary>Changes anything; for members without a method of their own, and for lists that are recorded as empty.</summary>
    /// <exception cref="InvalidOperationException">The record was built before.</exception>
    public RecordBuilder With(Func<TeardownRecord, TeardownRecord> change)
    {
        if (frozen) throw new InvalidOperationException("The record is built; start another builder.");
        record = change(record);
        return this;
    }

    /// <summary>Checks the record and freezes the builder. Later calls give the same record.</summary>
    /// <remarks>A record without parts gets a main board, <c>mainboard</c>, because the format asks for one part at least.</remarks>
    /// <exception cref="InvalidTestRecordException">Ids are no slugs, stand twice or dangle; it names every problem. The builder stays open.</exception>
    public TeardownRecord Build()
    {
        if (frozen) return record;
        if (record.Parts.Count == 0) Part(Roles.Mainboard);
        var problems = RecordIds.ProblemsOf(record);
        if (!problems.IsEmpty) throw new InvalidTestRecordException(problems);
        frozen = true;
        return record;
    }

    /// <summary>Builds the record and makes a case of it.</summary>
    /// <exception cref="InvalidTestRecordException">As for <see cref="Build"/>.</exception>
    public TeardownCase ToCase() => new RecordCase(Build());

    static T Changed<T>(T entry, Func<T, T>? configure) => configure is null ? entry : configure(entry);

    static EntryList<T> Plus<T>(EntryList<T> list, T entry) => EntryList.Of(list.AsArray().Add(entry));

    static ImmutableArray<T> OrNone<T>(ImmutableArray<T> list) => list.IsDefault ? [] : list;
}
