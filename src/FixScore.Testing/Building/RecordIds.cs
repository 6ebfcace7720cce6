using System.Collections.Immutable;
using System.Text.RegularExpressions;
using FixScore.Records;

namespace FixScore.Testing;

/// <summary>The ids of a record: each a slug, each once, none dangling.</summary>
static partial class RecordIds
{
    public static ImmutableArray<Problem> ProblemsOf(TeardownRecord record)
    {
        var source = new RecordCase(record);
        var defined = Defined(record).ToImmutableArray();
        var kinds = defined.ToLookup(each => each.Entry.Id, each => each.Kind, StringComparer.Ordinal);
        return
        [
            .. IsSlug(record.Id) ? [] : new[] { NotSlug(Pointer.Root.Child("id"), record.Id) },
            .. defined.Where(each => !IsSlug(each.Entry.Id)).Select(each => NotSlug(source.At(each.Entry), each.Entry.Id)),
            .. defined.GroupBy(each => each.Entry.Id, StringComparer.Ordinal).SelectMany(same => same.Skip(same.Key == Tool.Product ? 0 : 1))
                .Select(each => Twice(source.At(each.Entry), each.Entry.Id)),
            .. RecordReferences.Of(record).Where(each => !kinds[each.Id].Any(kind => each.Kind.HasFlag(kind)))
                .Select(each => Dangling(source.At(each.From), each)),
        ];
    }

    public static bool IsSlug(string text) => Slug().IsMatch(text);

    public static IEnumerable<(NamedEntry Entry, IdKind Kind)> Defined(TeardownRecord record) =>
    [
        .. All(record.Assessment.Units, IdKind.Unit), .. All(record.Parts, IdKind.Part), .. All(record.Joints, IdKind.Joint),
        .. All(record.Tools, IdKind.Tool), .. All(record.Consumables, IdKind.Consumable),
        .. All(record.Operations, IdKind.Operation), .. All(record.Milestones, IdKind.Milestone),
        .. All(record.Sequences, IdKind.Sequence), .. All(record.Swaps, IdKind.Trial), .. All(record.Locks, IdKind.Trial),
        .. All(record.Evidence, IdKind.Evidence),
    ];

    static IEnumerable<(NamedEntry, IdKind)> All(IEnumerable<NamedEntry> entries, IdKind kind) =>
        entries.Select(entry => (entry, kind));

    static Problem NotSlug(Pointer at, string id) => Problem.Of(Severity.Error, at, "id-not-slug",
        "The id '{id}' is not a slug.", "Use lower-case letters and digits, groups joined by '-' or '.'.", ("id", id));

    static Problem Twice(Pointer at, string id) => Problem.Of(Severity.Error, at, "id-taken",
        "The id '{id}' is taken.", "An id is unique in the whole record, and 'product' is reserved.", ("id", id));

    static Problem Dangling(Pointer at, Reference reference) => Problem.Of(Severity.Error, at, "id-dangling",
        "No {kind} has the id '{id}'.", "Add the entry or mend the id.",
        ("kind", reference.Kind.ToString().ToLowerInvariant()), ("id", reference.Id));

    [GeneratedRegex("^[a-z0-9]+([.-][a-z0-9]+)*\\z", RegexOptions.CultureInvariant)]
    private static partial Regex Slug();
}
