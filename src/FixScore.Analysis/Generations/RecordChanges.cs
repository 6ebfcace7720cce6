using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Analysis.Generations;

/// <summary>What changed between two records: last year's model and this one, or two versions of one record. Stateless, so safe to use from any thread.</summary>
/// <remarks>
/// Entries are matched by id, else by what they are like, where just one is left on each side: parts by role; joints by kind and
/// the parts they join, then by the parts alone; tools and consumables by name; operations by action and what they undo, remove
/// and move, then without the action; locks by the states they lead from and to; documents by subject; spares by part. Who
/// assessed when, units, trials, findings, notes, footage and recorded sequences are observations of one device, and are not
/// compared; what trials prove shows in the scores.
/// </remarks>
public static class RecordChanges
{
    /// <summary>The changes, ordinal by path.</summary>
    /// <param name="old">The old record.</param>
    /// <param name="new">The new record.</param>
    public static ImmutableArray<RecordChange> Between(TeardownRecord old, TeardownRecord @new) => new ComparedRecords(old, @new).Changes;

    /// <summary>The same changes gathered by entry, in the same order.</summary>
    /// <param name="old">The old record.</param>
    /// <param name="new">The new record.</param>
    public static ImmutableArray<EntryChange> ByEntry(TeardownRecord old, TeardownRecord @new)
    {
        var compared = new ComparedRecords(old, @new);
        return new EntryChanges(compared).Of(compared.Changes);
    }

    /// <summary>The entries that were matched though their ids differ: for each id of the new record the one it had, ordinal by the new.</summary>
    /// <param name="old">The old record.</param>
    /// <param name="new">The new record.</param>
    public static IReadOnlyDictionary<string, string> Renamed(TeardownRecord old, TeardownRecord @new) => new ComparedRecords(old, @new).Renamed;
}
