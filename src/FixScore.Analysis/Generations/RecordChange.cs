namespace FixScore.Analysis.Generations;

/// <summary>What became of a member of a record.</summary>
public enum ChangeKind
{
    /// <summary>Only the new record has it.</summary>
    Added,

    /// <summary>Only the old record has it.</summary>
    Removed,

    /// <summary>Both have it, with other values.</summary>
    Changed,
}

/// <summary>A difference between two records.</summary>
/// <param name="Kind">What became of it.</param>
/// <param name="Path">Where, with entries of lists by their new ids: <c>/joints/battery-tabs/adhesive/type</c>.</param>
/// <param name="At">JSON Pointer into the new record; into the old one for what was removed.</param>
/// <param name="Old">Canonical JSON of the old value; <c>null</c> where there was none.</param>
/// <param name="New">Canonical JSON of the new value; <c>null</c> where there is none.</param>
/// <param name="Was">The id that the entry had in the old record, where it is another one; <c>null</c> where both agree.</param>
public sealed record RecordChange(ChangeKind Kind, Pointer Path, Pointer At, string? Old, string? New, string? Was)
{
    /// <summary>The list or member of the record that it belongs to, such as <c>joints</c>.</summary>
    public string Topic => Path.Text.Split('/')[1];

    /// <summary>The entry of that list; <c>null</c> where the topic has none.</summary>
    public string? Entry => Path.Text.Split('/') is [_, _, var entry, ..] && HasEntries(Topic) ? entry : null;

    /// <summary>The old value with the ids of the new record.</summary>
    internal string? OldAsNow { get; init; }

    internal static bool HasEntries(string topic) => topic is not ("device" or "support");

    /// <summary>Names of the members below the entry, or below the topic where it has none.</summary>
    internal IEnumerable<string> Below => Path.Text.Split('/').Skip(Entry is null ? 2 : 3);

    /// <summary>A sentence in the words of the record.</summary>
    public string Text => ChangeText.Of(this);
}
