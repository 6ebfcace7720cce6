using FixScore.Records;

namespace FixScore.Testing;

/// <summary>Follows pointers into a record, down to entries and their members.</summary>
/// <param name="record">The record.</param>
sealed class PointerWalker(TeardownRecord record)
{
    readonly Dictionary<string, HashSet<Pointer>> existing = new(StringComparer.Ordinal);

    /// <summary>Whether the record has what <paramref name="pointer"/> names.</summary>
    public bool Exists(Pointer pointer)
    {
        if (pointer == Pointer.Root) return true;
        var path = PathOf(pointer);
        if (RecordMembers.At(path) is { } member) return Existing(member).Contains(pointer);
        // Below lists of ids, conditions, footage and installed parts the table goes no deeper: what holds them has to do.
        var holder = Parent(pointer);
        return holder != Pointer.Root && !RecordMembers.HasInside(PathOf(holder)) && Exists(holder);
    }

    /// <summary>Whether the record has it, or has the entry that could.</summary>
    public bool CouldExist(Pointer pointer) =>
        Exists(pointer) || (!IsIndex(LastStep(pointer)) && RecordMembers.At(PathOf(pointer)) is not null && CouldExist(Parent(pointer)));

    HashSet<Pointer> Existing(Member member)
    {
        if (!existing.TryGetValue(member.Path, out var found)) existing[member.Path] = found = [.. member.Existing(record)];
        return found;
    }

    static string PathOf(Pointer pointer)
    {
        var steps = pointer.Text.Split('/').Skip(1).Select(step => IsIndex(step) ? "[]" : step);
        return string.Join('.', steps).Replace(".[]", "[]", StringComparison.Ordinal);
    }

    static Pointer Parent(Pointer pointer) => new(pointer.Text[..Math.Max(0, pointer.Text.LastIndexOf('/'))]);

    static string LastStep(Pointer pointer) => pointer.Text[(pointer.Text.LastIndexOf('/') + 1)..];

    static bool IsIndex(string step) => step.Length > 0 && step.All(char.IsAsciiDigit);
}
