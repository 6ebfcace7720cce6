using System.Collections.Immutable;

namespace FixScore.Analysis.Generations;

/// <summary>All that changed about an entry of a record, in one sentence; entries that changed in the very same way stand together.</summary>
/// <remarks>Immutable and thread safe.</remarks>
/// <param name="Kind">What became of it.</param>
/// <param name="Topic">The list or member of the record, such as <c>joints</c>.</param>
/// <param name="Entries">The entries, by what they are called now and, where that differs, before; empty where the topic has none.</param>
/// <param name="Text">What is new, gone or different, in the words of the record.</param>
/// <param name="Changes">The changes, member by member.</param>
public sealed record EntryChange(ChangeKind Kind, string Topic, ImmutableArray<string> Entries, string Text, ImmutableArray<RecordChange> Changes)
{
    // Names, places and what has to come before.
    static readonly string[] Minor = ["name", "where", "under", "caution", "hazards", "after", "directlyAfter", "inert"];

    /// <summary>Whether nothing but names, places, cautions or what has to come before differs.</summary>
    public bool IsMinor => Kind == ChangeKind.Changed && Changes.All(change => Minor.Contains(change.Below.FirstOrDefault()));
}
