using System.Globalization;
using FixScore.Records;

namespace FixScore.Reporting;

/// <summary>Where in a record something stands, and what shows it: pointers with the names of their entries, footage and other evidence.</summary>
public static class EvidenceText
{
    const int Most = 12;

    /// <summary>The places, in the order given; a pointer of the whole record is called so.</summary>
    public static string Of(TeardownRecord record, IReadOnlyCollection<Pointer> pointers)
    {
        var places = pointers.Distinct().Take(Most).Select(pointer => Place(record, pointer));
        var more = pointers.Distinct().Count() - Most;
        return string.Join("; ", more > 0 ? places.Append(string.Create(CultureInfo.InvariantCulture, $"and {more} more")) : places);
    }

    static string Place(TeardownRecord record, Pointer pointer)
    {
        if (pointer == Pointer.Root) return "record";
        var entry = EntryAt(record, pointer);
        return string.Join(", ", [$"{pointer}{NameOf(entry)}", .. Shows(record, entry)]);
    }

    static string NameOf(RecordEntry? entry) => entry switch
    {
        NamedEntry named => $" {named.Id}",
        Document document => $" {Word.Of(document.Subject)}",
        Spare spare => $" {spare.Part}",
        _ => "",
    };

    // The entry itself or, for a place inside one, the entry around it.
    static RecordEntry? EntryAt(TeardownRecord record, Pointer pointer)
    {
        if (pointer.Text.Split('/') is not ["", var list, var index, ..]) return null;
        if (!int.TryParse(index, NumberStyles.None, CultureInfo.InvariantCulture, out var at)) return null;
        return ListOf(record, list) is { } entries && at < entries.Count ? entries[at] : null;
    }

    static IReadOnlyList<RecordEntry>? ListOf(TeardownRecord record, string list) => list switch
    {
        "parts" => record.Parts,
        "joints" => record.Joints,
        "tools" => record.Tools,
        "operations" => record.Operations,
        "sequences" => record.Sequences,
        "swaps" => record.Swaps,
        "locks" => record.Locks,
        "documentation" => record.Documentation,
        "spares" => record.Spares,
        "evidence" => record.Evidence,
        _ => null,
    };

    static IEnumerable<string> Shows(TeardownRecord record, RecordEntry? entry)
    {
        if (entry is EvidenceItem item) return [item.Ref];
        var footage = entry is Operation operation
            ? operation.Footage.Select(piece => $"{RefOf(record, piece.Source)} {Time(piece.From)} to {Time(piece.To)}, {piece.Unit}")
            : [];
        return footage.Concat((entry?.Evidence ?? []).Select(id => RefOf(record, id)));
    }

    static string RefOf(TeardownRecord record, string id) => record.Evidence.FirstOrDefault(item => item.Id == id)?.Ref ?? id;

    static string Time(TimeSpan time) => string.Create(CultureInfo.InvariantCulture, $"{(int)time.TotalHours}:{time.Minutes:00}:{time.Seconds:00}");
}
