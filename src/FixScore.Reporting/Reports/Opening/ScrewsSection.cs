using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>Which screws there are, where they go, and which must not change places.</summary>
sealed class ScrewsSection(CultureInfo culture)
{
    /// <summary>The section.</summary>
    /// <param name="source">The record.</param>
    public Section Of(TeardownCase source)
    {
        var (record, kinds) = (source.Record, ScrewKind.Of(source.Record));
        return new("Screw plan", kinds.IsEmpty ? [None(record)] : [.. Plan(kinds, new(record, culture))]) { Anchor = "screws" };
    }

    static Prose None(TeardownRecord record) => record.Joints.IsRecorded
        ? new("The record lists no screws.") : new("What holds the device together is not recorded.", Tone.Open);

    static IEnumerable<Block> Plan(ImmutableArray<ScrewKind> kinds, RecordTerms terms)
    {
        yield return new Prose("One compartment for each row; in it, the screws of each joint by themselves.");
        yield return new Items([.. Alike(kinds, terms)]);
        yield return new Grid("Screws",
            ["Mark", "Drive", new("Thread, mm", GridKind.Number), new("Length, mm", GridKind.Number), new("Count", GridKind.Number), "Joints", new("Holds") { IsExtra = true }],
            [.. kinds.Select(kind => Row(kind, terms))]);
        yield return new Items([.. kinds.SelectMany(kind => kind.Joints).SelectMany(joint => Remarks(joint))]);
        yield return new Items([.. Missing(kinds)]);
        yield return new Prose("Records do not keep the shape of heads nor whether screws are captive, unless a note says so.", Tone.Quiet);
    }

    static ImmutableArray<GridCell> Row(ScrewKind kind, RecordTerms terms) =>
    [
        kind.Mark, kind.Screw is { } screw ? RecordTerms.Words(screw.Drive) : RecordTerms.NotRecorded, Cell(kind.Screw?.DiameterMm, terms), Cell(kind.Screw?.LengthMm, terms), Cell(kind.Count, terms),
        string.Join("; ", kind.Joints.Select(joint => $"{joint.Id} ({terms.Amount(joint.Count)}){(joint.Where is { } where ? $", {RecordTerms.Name(where)}" : "")}")),
        string.Join(", ", kind.Joints.SelectMany(joint => joint.Joins).Distinct(StringComparer.Ordinal)),
    ];

    static GridCell Cell(Quantity? amount, RecordTerms terms) => amount is { } known ? terms.Amount(known) : RecordTerms.NotRecorded;

    // Each set of look-alikes once, told by its first kind.
    static IEnumerable<Item> Alike(ImmutableArray<ScrewKind> kinds, RecordTerms terms)
    {
        foreach (var (index, kind) in kinds.Index())
        {
            ScrewKind[] set = [kind, .. kinds.Where(kind.IsEasilyMixedWith)];
            if (kinds.Take(index).Any(set.Contains) || (set.Length == 1 && (kind.HasLength || kind.Joints.Length == 1 || !HasThread(kind)))) continue;
            yield return new($"Do not mix {string.Join(", ", set.Select(each => Named(each, terms)))}: same drive and thread ({RecordTerms.Words(kind.Screw!.Drive)}, {terms.Amount(kind.Screw.DiameterMm, " mm")}), "
                + "other length or not known to be the same. One that is too long can pierce a cell, a board or a display.", Tone.Mind);
        }
    }

    static bool HasThread(ScrewKind kind) => kind.Screw is { } screw && !screw.Drive.IsUnknown && screw.DiameterMm != default;

    // Screws of one kind whose length is open are told by their joints.
    static string Named(ScrewKind kind, RecordTerms terms) =>
        $"{kind.Mark} ({(kind.HasLength ? terms.Amount(kind.Screw!.LengthMm, " mm long") : $"length {(kind.Screw!.LengthMm == default ? RecordTerms.NotRecorded : terms.Amount(kind.Screw.LengthMm, " mm"))}: {Ids(kind.Joints)}")})";

    static IEnumerable<Item> Remarks(Joint joint)
    {
        if (joint.Integral) yield return new($"{joint.Id}: not meant to be undone; what it holds is replaced together.");
        if (joint.Hidden == true) yield return new($"{joint.Id}: out of sight{(joint.Under.IsEmpty ? "" : $", under {string.Join(", ", joint.Under)}")}.", Tone.Mind);
        if (joint.Note is { } note) yield return new($"{joint.Id}: {RecordTerms.Sentence(note)}");
    }

    static IEnumerable<Item> Missing(ImmutableArray<ScrewKind> kinds)
    {
        Joint[] all = [.. kinds.SelectMany(kind => kind.Joints)];
        (string What, Func<Joint, bool> IsMissing)[] asked =
        [
            ("drive, thread and length", joint => joint.Screw is null),
            ("drive", joint => joint.Screw is { Drive.IsUnknown: true }),
            ("thread", joint => joint.Screw is { } screw && screw.DiameterMm == default),
            ("length", joint => joint.Screw is { } screw && screw.LengthMm == default),
            ("number of screws", joint => joint.Count == default),
        ];
        return from each in asked let missing = all.Where(each.IsMissing).ToArray() where missing.Length > 0 select new Item($"{each.What} of {Ids(missing)}", Tone.Open);
    }

    static string Ids(IEnumerable<Joint> joints) => string.Join(", ", joints.Select(joint => joint.Id));
}
