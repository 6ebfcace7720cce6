using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>Which documents there are, who can get them at what cost, and which kinds nobody recorded.</summary>
sealed class DocumentsSection(CultureInfo culture)
{
    const string Title = "Documentation";

    public Section Of(TeardownCase source)
    {
        var record = source.Record;
        return new(Title, record.Documentation.Count > 0 ? Told(record) : [new Prose(record.Documentation.IsRecorded ? "The record says that there is no documentation." : "Documentation is not recorded.")])
        {
            Anchor = $"{record.Id}-documents",
        };
    }

    ImmutableArray<Block> Told(TeardownRecord record)
    {
        var wording = new SupplyWording(new(record, culture), culture);
        var grid = new Grid("Documents",
            ["Document", "About", "Available to", "Cost", "Kept available for"], [.. record.Documentation.Select(document => Row(wording, document))]);
        return [.. Coverage(record.Documentation), SupplyWording.WithRemarks(grid, record, record.Documentation)];
    }

    static ImmutableArray<GridCell> Row(SupplyWording wording, Document document)
    {
        var exists = !document.Audience.Is(Audience.Nobody);
        return
        [
            RecordTerms.Plainly(document.Subject),
            document.Parts.IsEmpty ? "the whole device" : string.Join(", ", document.Parts),
            exists ? SupplyWording.Audience(document.Audience) : "nobody: looked for, there is none",
            exists ? RecordTerms.Words(document.Cost) : SupplyWording.DoesNotApply,
            exists ? wording.Years(document.Years) : SupplyWording.DoesNotApply,
        ];
    }

    IEnumerable<Block> Coverage(EntryList<Document> documents)
    {
        var kinds = Enum.GetValues<DocumentSubject>();
        DocumentSubject[] listed = [.. kinds.Where(kind => documents.Any(document => document.Subject == kind))];
        var free = listed.Count(kind => documents.Any(document => document.Subject == kind && document.Parts.IsEmpty && document.Audience.Is(Audience.Public) && document.Cost.Is(DocumentCost.Free)));
        yield return new Prose($"{Text(listed.Length)} of {Text(kinds.Length)} kinds of document are recorded; {Text(free)} of them free for everyone and about the whole device.", Tone.Lead);
        var others = kinds.Except(listed).ToArray();
        if (others.Length > 0) yield return new Prose($"whether there is any of these kinds: {string.Join(", ", others.Select(RecordTerms.Plainly))} (not recorded).", Tone.Open);
    }

    string Text(int number) => number.ToString(culture);
}
