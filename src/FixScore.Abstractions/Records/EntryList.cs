using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace FixScore.Records;

/// <summary>A list at the top of a record: recorded (perhaps as empty: there is none) or not recorded (unknown).</summary>
/// <remarks><c>default</c> is not recorded; enumerating it yields nothing. Immutable and thread safe.</remarks>
/// <typeparam name="T">What the list holds.</typeparam>
[CollectionBuilder(typeof(EntryList), nameof(EntryList.Of))]
public readonly struct EntryList<T> : IReadOnlyList<T>
{
    readonly ImmutableArray<T> entries;

    internal EntryList(ImmutableArray<T> entries) => this.entries = entries;

    /// <summary>Whether the list was recorded; an empty recorded list says that there is none.</summary>
    public bool IsRecorded => !entries.IsDefault;

    /// <summary>How many entries are listed; 0 when not recorded.</summary>
    public int Count => entries.IsDefault ? 0 : entries.Length;

    /// <summary>The entry at <paramref name="index"/>.</summary>
    /// <exception cref="IndexOutOfRangeException">There is no such entry.</exception>
    public T this[int index] => entries[index];

    /// <summary>The entries as an array; empty when not recorded.</summary>
    public ImmutableArray<T> AsArray() => entries.IsDefault ? [] : entries;

    /// <summary>Enumerates the entries in the order of the record.</summary>
    public ImmutableArray<T>.Enumerator GetEnumerator() => AsArray().GetEnumerator();

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)AsArray()).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => ((IEnumerable)AsArray()).GetEnumerator();
}

/// <summary>Makes recorded lists.</summary>
public static class EntryList
{
    /// <summary>A recorded list; without entries it says that there is none.</summary>
    public static EntryList<T> Of<T>(params ReadOnlySpan<T> entries) => new([.. entries]);

    /// <summary>A recorded list over an array.</summary>
    public static EntryList<T> Of<T>(ImmutableArray<T> entries) => new(entries.IsDefault ? [] : entries);
}
