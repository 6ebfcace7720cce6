using System.Collections.Immutable;
using FixScore.Reporting.Tables;

namespace FixScore.Reporting.Reports;

/// <summary>Scores as a table: every line of every score.</summary>
static class ReportTables
{
    public static ResultTable Lines(ReportInput input) => new("lines", "Points of every line",
        [
            new("device", ColumnKind.Text, "id of the record"),
            new("profile", ColumnKind.Text, "id of the profile"),
            new("path", ColumnKind.Text, "path of the line; empty for the total"),
            new("title", ColumnKind.Text, "name of the line"),
            new("share", ColumnKind.Number, "share of the total's weight, 0 to 1"),
            new("low", ColumnKind.Number, "low end, points"),
            new("high", ColumnKind.Number, "high end, points"),
            new("headroom", ColumnKind.Number, "how far the low end of the total rises if the line had its maximum"),
        ],
        [.. input.Judgements.SelectMany(judgement => judgement.Score.Nodes.Select(node => Row(judgement, node)).Prepend(Total(judgement)))]);

    static ImmutableArray<Cell> Total(Judgement judgement) =>
        [judgement.Record.Id, judgement.Score.Profile.Id, "", "total", 1, judgement.Score.Total.Low, judgement.Score.Total.High, default];

    static ImmutableArray<Cell> Row(Judgement judgement, ScoreNode node) =>
        [judgement.Record.Id, judgement.Score.Profile.Id, node.Path, node.Title, node.Share, node.Value.Low, node.Value.High, node.Headroom];
}
