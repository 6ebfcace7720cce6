using System.Collections.Immutable;
using System.Globalization;
using FixScore.Analysis;

namespace FixScore.Cli.Commands.Compare;

/// <summary>
/// Reads a table of units and criteria: the first line names the criteria, the first cell of each row the unit. Rows
/// <c>#weight</c>, <c>#better</c> (more or less), <c>#worst</c> and <c>#best</c> (goalposts) say how to take the columns. A cell is a
/// number, a range like <c>3..5</c>, or empty for unknown, which takes both goalposts. All problems come at once.
/// </summary>
sealed class TableReader
{
    static readonly string[] Notes = ["#weight", "#better", "#worst", "#best"];

    readonly CsvRow[] rows;
    readonly ImmutableArray<string> criteria;
    readonly List<LocatedProblem> problems = [];

    TableReader(CsvRow[] rows) => (this.rows, criteria) = (rows, rows.Length == 0 ? [] : [.. rows[0].Cells.Skip(1)]);

    public static (GivenTable? Table, IReadOnlyList<LocatedProblem> Problems) Read(ReadOnlyMemory<byte> utf8) => new TableReader(CsvRow.Of(utf8)).Read();

    (GivenTable?, IReadOnlyList<LocatedProblem>) Read()
    {
        if (criteria.IsEmpty)
        {
            Add(1, "table-without-criteria", "There is no line that names criteria.", "The first line is: unit, first criterion, second criterion, ...");
            return (null, problems);
        }
        CsvRow[] units = [.. rows.Skip(1).Where(row => !IsNote(row))];
        Check(units);
        var (worst, best) = (Numbers("#worst"), Numbers("#best"));
        var weights = Numbers("#weight").Select(weight => weight ?? 1m).ToImmutableArray();
        var table = new UnitTable([.. units.Select(unit => unit.Cells[0])], criteria, [.. units.Select(unit => criteria.Select((_, i) => Cell(unit, i, worst[i], best[i])).ToImmutableArray())]);
        if (weights.Any(weight => weight < 0) || weights.All(weight => weight == 0))
            Add(Note("#weight")!.Line, "weights-not-positive", "Weights are 0 or more, and one at least is above 0.", "Give relative weights such as 2, 1, 1.");
        var given = new GivenTable(table, weights, Directions(), worst, best);
        return (problems.Count == 0 ? given : null, problems);
    }

    static bool IsNote(CsvRow row) => row.Cells[0].StartsWith('#');

    CsvRow? Note(string name) => rows.Skip(1).FirstOrDefault(row => row.Cells[0] == name);

    void Check(CsvRow[] units)
    {
        foreach (var row in rows.Skip(1).Where(IsNote).Where(row => !Notes.Contains(row.Cells[0])))
            Add(row.Line, "row-unknown", $"'{row.Cells[0]}' is no row that says how to take columns.", Suggestion.Hint(row.Cells[0], Notes));
        foreach (var twice in rows.Skip(1).GroupBy(row => row.Cells[0]).Where(same => same.Count() > 1))
            Add(twice.ElementAt(1).Line, "row-twice", $"'{twice.Key}' stands twice.", "Give each unit a name of its own.");
        if (criteria.Distinct().Count() < criteria.Length) Add(1, "criterion-twice", "A criterion stands twice.", "Give each column a name of its own.");
        foreach (var row in rows.Skip(1).Where(row => row.Cells.Length != criteria.Length + 1))
            Add(row.Line, "cells-do-not-fit", $"'{row.Cells[0]}' has {row.Cells.Length - 1} values for {criteria.Length} criteria.", "Give one for each, empty where nothing is known.");
        if (units.Length < 2) Add(1, "too-few-units", "There is nothing to compare: a table needs two units at least.", "Add a row for each unit.");
    }

    ImmutableArray<decimal?> Numbers(string note) => Note(note) is { } row ? [.. criteria.Select((_, i) => Number(row, i))] : [.. criteria.Select(_ => (decimal?)null)];

    decimal? Number(CsvRow row, int criterion) => Text(row, criterion) is { Length: > 0 } text ? Parse(text) ?? NoNumber(row, criterion, text) : null;

    ImmutableArray<Direction> Directions() => Note("#better") is { } row
        ? [.. criteria.Select((_, i) => Text(row, i) switch { "" or "more" => Direction.MoreIsBetter, "less" => Direction.LessIsBetter, var word => NoWord(row, word) })]
        : [.. criteria.Select(_ => Direction.MoreIsBetter)];

    Interval Cell(CsvRow row, int criterion, decimal? worst, decimal? best)
    {
        var text = Text(row, criterion);
        if (text.Length == 0 && worst is { } bad && best is { } good) return new(Math.Min(bad, good), Math.Max(bad, good));
        if (text.Length == 0 && criterion < row.Cells.Length - 1)
            Add(row.Line, "unknown-without-goalposts", $"'{criteria[criterion]}' of '{row.Cells[0]}' is unknown, and nothing says what it can be.", "Give a range like 3..5, or rows #worst and #best.");
        if (text.Length == 0) return 0m;
        var ends = text.Split("..", 2);
        var (low, high) = (Parse(ends[0]), Parse(ends[^1]));
        return low <= high ? new Interval(low!.Value, high!.Value) : NoNumber(row, criterion, text) ?? 0m;
    }

    static string Text(CsvRow row, int criterion) => criterion + 1 < row.Cells.Length ? row.Cells[criterion + 1] : "";

    static decimal? Parse(string text) => decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;

    decimal? NoNumber(CsvRow row, int criterion, string text)
    {
        Add(row.Line, "not-a-number", $"'{criteria[criterion]}' of '{row.Cells[0]}' is '{text}', which is no number that can be compared.", "Write numbers like 12.5, ranges like 3..5; leave unknown ones empty.");
        return null;
    }

    Direction NoWord(CsvRow row, string word)
    {
        Add(row.Line, "not-a-direction", $"'{word}' does not say whether more or less is better.", "Write more or less.");
        return Direction.MoreIsBetter;
    }

    void Add(int line, string code, string message, string hint) => problems.Add(new(Problem.Of(Severity.Error, Pointer.Root, code, "{what}", hint, ("what", message)), line, 1));
}
