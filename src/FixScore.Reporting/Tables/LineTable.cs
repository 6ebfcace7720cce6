using System.Collections.Immutable;

namespace FixScore.Reporting.Tables;

/// <summary>Scores of many records as one flat table: a row for each record's total and one for each of its lines.</summary>
public static class LineTable
{
    /// <summary>The columns.</summary>
    public static ImmutableArray<Column> Columns { get; } =
    [
        new("line", ColumnKind.Count, "number of the line that the record stood on, from 1"),
        new("record", ColumnKind.Text, "id of the record; empty when it cannot be used"),
        new("recordDigest", ColumnKind.Text, "digest of the record"),
        new("profile", ColumnKind.Text, "id of the profile"),
        new("profileVersion", ColumnKind.Text, "version of the profile"),
        new("path", ColumnKind.Text, "path of the line of the score; empty for the total after gates"),
        new("criterion", ColumnKind.Text, "id of the criterion, where the line judges by one"),
        new("share", ColumnKind.Number, "share of the total's weight, 0 to 1"),
        new("low", ColumnKind.Number, "low end, points; nearest binary number"),
        new("high", ColumnKind.Number, "high end, points; nearest binary number"),
        new("lowExact", ColumnKind.Text, "low end, points, exact"),
        new("highExact", ColumnKind.Text, "high end, points, exact"),
        new("classLow", ColumnKind.Text, "class of the total's low end"),
        new("classHigh", ColumnKind.Text, "class of the total's high end"),
        new("problem", ColumnKind.Text, "codes of what stood in the way; empty when there is a score"),
    ];

    /// <summary>The rows of one line.</summary>
    public static ImmutableArray<ImmutableArray<Cell>> Rows(ScoredLine line, Profile profile) => line.Score is { } score
        ? [Total(line, score), .. score.Nodes.Select(node => Node(line, score, node))]
        : [Row(line, null, profile.Id, profile.Version, null, null, null, null, null, string.Join(' ', line.Problems.Select(each => each.Problem.Code).Distinct()))];

    static ImmutableArray<Cell> Total(ScoredLine line, ScoreDocument score) =>
        Row(line, score.Record, score.Profile.Id, score.Profile.Version, null, null, 1, score.Total, score.Class, null);

    static ImmutableArray<Cell> Node(ScoredLine line, ScoreDocument score, ScoreNode node) =>
        Row(line, score.Record, score.Profile.Id, score.Profile.Version, node.Path, node.Criterion?.Id, node.Share, node.Value, null, null);

    static ImmutableArray<Cell> Row(
        ScoredLine line, RecordReference? record, string profile, string version, string? path, string? criterion, decimal? share, Interval? value, ClassRange? range, string? problem) =>
    [
        line.Number, record?.Id, record?.Digest, profile, version, path, criterion, share,
        value?.Low, value?.High, Exact(value?.Low), Exact(value?.High), range?.Low, range?.High, problem,
    ];

    static Cell Exact(decimal? value) => value is null ? default(Cell) : CsvForm.Text(value);
}
