using System.Collections.Immutable;
using System.Globalization;
using FixScore.Pairing;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>The same swap under two circumstances, all else equal: function by function in a table.</summary>
static class ComparedSections
{
    /// <summary>Lock states; says so when none was compared.</summary>
    public static Section Locks(ContextComparison comparison)
    {
        var grid = Grid(comparison, ComparedBy.LockState);
        return new("The same swap with the lock closed and open", grid.Rows.IsEmpty ? [new Prose("No swap was tried in more than one lock state, all else equal.")] : [grid]);
    }

    /// <summary>Procedures; none when none was compared.</summary>
    public static IEnumerable<Section> Procedures(ContextComparison comparison, CultureInfo culture)
    {
        var grid = Grid(comparison, ComparedBy.Procedure);
        var parts = Items.Of(comparison.Parts.Select(each => PlainText.Of(each.Finding.Why.ToString(culture))));
        if (!grid.Rows.IsEmpty || !parts.Entries.IsEmpty) yield return new("What procedures of the maker do", [parts, grid]);
    }

    /// <summary>Sources of parts; none when none was compared.</summary>
    public static IEnumerable<Section> Sources(ContextComparison comparison)
    {
        var grid = Grid(comparison, ComparedBy.Source);
        if (!grid.Rows.IsEmpty) yield return new("Loose spares against parts of a sister unit", [grid]);
    }

    static Grid Grid(ContextComparison comparison, ComparedBy by) => new("The same parts swapped, all else equal",
        ["Parts", "Function", "First", "Second", "The second is", new("Trials") { IsExtra = true }],
        [.. comparison.Functions.Where(each => each.By == by).Select(Row)]);

    static ImmutableArray<GridCell> Row(ComparedFunction compared) =>
    [
        string.Join(", ", compared.Parts), RecordTerms.Name(compared.Function), Side(compared.By, compared.First), Side(compared.By, compared.Second),
        Fares(compared), string.Join(", ", compared.Finding.Trials),
    ];

    static string Side(ComparedBy by, ComparedSide side) => $"{What(by, side.What)}: {RecordTerms.Words(side.Result)}";

    static string What(ComparedBy by, string what) => (by, what) switch
    {
        (ComparedBy.Procedure, "none") => "no procedure",
        (ComparedBy.Source, "device") => "sister unit",
        _ => RecordTerms.Name(what.Replace('-', ' ')),
    };

    static string Fares(ComparedFunction compared)
    {
        var fares = compared.Fares == Pairing.Fares.Open ? "not told apart" : RecordTerms.Plainly(compared.Fares);
        return compared.IsComparable ? fares : $"{fares}; not comparable: model codes {string.Join(", ", compared.ModelCodes.Select(RecordTerms.Name))}";
    }
}
