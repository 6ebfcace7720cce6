using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>What documents and spares have in common, in words.</summary>
sealed class SupplyWording(RecordTerms terms, CultureInfo culture)
{
    /// <summary>Said where nothing exists, so that nothing can be asked of it.</summary>
    public const string DoesNotApply = "-";

    public static string Audience(OneOf<Audience> audience) => audience.IsUnknown ? RecordTerms.NotRecorded : string.Join(" or ", audience.Stated.Select(Audience));

    public string Years(Quantity? years) => Amount(years, "year", "years");

    public string WorkingDays(Quantity? days) => Amount(days, "working day", "working days");

    public string Money(Price? price) => price is null ? RecordTerms.NotRecorded : $"{Sum(price.Amount)} {RecordTerms.Name(price.Currency)}, {Tax(price.TaxIncluded)}";

    /// <summary>A column of remarks and evidence, where an entry has any.</summary>
    public static Grid WithRemarks<T>(Grid grid, TeardownRecord record, EntryList<T> entries) where T : RecordEntry
    {
        string[] remarks = [.. entries.Select(entry => RemarkText.Of(record, entry))];
        return remarks.All(remark => remark.Length == 0) ? grid : grid with
        {
            Columns = [.. grid.Columns, new("Remarks") { IsExtra = true }],
            Rows = [.. grid.Rows.Zip(remarks, (row, remark) => (ImmutableArray<GridCell>)[.. row, remark])],
        };
    }

    static string Audience(Audience audience) => audience switch
    {
        Records.Audience.Public => "everyone",
        Records.Audience.Repairers => "independent repairers",
        Records.Audience.Authorised => "the maker's own network",
        _ => "nobody",
    };

    string Amount(Quantity? amount, string one, string many) => terms.Amount(amount ?? default, $" {(amount == 1 ? one : many)}");

    string Sum(Quantity amount) => amount switch
    {
        { Min: { } min, Max: { } max } => min == max ? Sum(min) : $"{Sum(min)} to {Sum(max)}",
        { Min: { } min } => $"{Sum(min)} or more",
        { Max: { } max } => $"{Sum(max)} or less",
        _ => RecordTerms.NotRecorded,
    };

    string Sum(decimal amount) => amount.ToString(decimal.IsInteger(amount) ? "0" : "0.00##", culture);

    static string Tax(bool? included) => included switch { true => "tax included", false => "without tax", null => "tax not recorded" };
}
