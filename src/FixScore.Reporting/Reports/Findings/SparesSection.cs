using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>Which spare parts can be had, by whom, for what, how fast and for how long.</summary>
sealed class SparesSection(CultureInfo culture)
{
    const string Title = "Spare parts";

    public Section Of(TeardownCase source)
    {
        var record = source.Record;
        return new(Title, record.Spares.Count > 0 ? Told(record) : [new Prose(record.Spares.IsRecorded ? "The record says that no spare parts are on offer." : "Spare parts are not recorded.")])
        {
            Anchor = $"{record.Id}-spares",
        };
    }

    ImmutableArray<Block> Told(TeardownRecord record)
    {
        var terms = new RecordTerms(record, culture);
        var wording = new SupplyWording(terms, culture);
        var grid = new Grid("Spare parts",
            ["Part", "Available to", "Price", "Delivery", "Kept available for", "Sold", "Screws and adhesive with it"], [.. record.Spares.Select(spare => Row(terms, wording, spare))]);
        return
        [
            new Prose($"{Summary(record)} Price of the device: {wording.Money(record.Device.Price)}."),
            SupplyWording.WithRemarks(grid, record, record.Spares),
            .. Others(record),
        ];
    }

    string Summary(TeardownRecord record)
    {
        int For(Audience audience) => record.Spares.Where(spare => spare.Audience.Is(audience)).Select(spare => spare.Part).Distinct(StringComparer.Ordinal).Count();
        return $"Parts with a spare for everyone: {Text(For(Audience.Public))}; for independent repairers: {Text(For(Audience.Repairers))}; for the maker's own network: {Text(For(Audience.Authorised))}; looked for, on offer to nobody: {Text(For(Audience.Nobody))}.";
    }

    static ImmutableArray<GridCell> Row(RecordTerms terms, SupplyWording wording, Spare spare) => spare.Audience.Is(Audience.Nobody)
        ? [terms.Part(spare.Part), "nobody: looked for, not on offer", .. Enumerable.Repeat((GridCell)SupplyWording.DoesNotApply, 5)]
        :
        [
            terms.Part(spare.Part),
            SupplyWording.Audience(spare.Audience),
            wording.Money(spare.Price),
            wording.WorkingDays(spare.DeliveryDays),
            wording.Years(spare.Years),
            spare.OnlyBundledWith.IsEmpty ? "on its own" : $"only with {string.Join(", ", spare.OnlyBundledWith)}",
            Fasteners(terms, spare.FastenersIncluded),
        ];

    static string Fasteners(RecordTerms terms, FastenersIncluded? included) => included switch
    {
        null => RecordTerms.NotRecorded,
        { All: true } => "all fasteners of its own joints",
        { Joints.IsEmpty: true } => "no fasteners",
        _ => terms.Joints(included.Joints),
    };

    IEnumerable<Block> Others(TeardownRecord record)
    {
        var others = record.Parts.Select(part => part.Id).Except(record.Spares.Select(spare => spare.Part), StringComparer.Ordinal).ToArray();
        if (others.Length > 0) yield return new Prose($"whether there is a spare for {Text(others.Length)} of {Text(record.Parts.Count)} parts: {string.Join(", ", others)} (not recorded).", Tone.Open);
    }

    string Text(int number) => number.ToString(culture);
}
