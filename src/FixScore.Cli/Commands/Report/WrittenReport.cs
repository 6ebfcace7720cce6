using System.Collections.Immutable;
using System.Text;
using FixScore.Cli.Files;
using FixScore.Reporting.Cards;
using FixScore.Reporting.Paper;
using FixScore.Reporting.Reports;
using FixScore.Reporting.Tables;

namespace FixScore.Cli.Commands.Report;

// Inside the namespace: it is also the name of this namespace.
using Report = FixScore.Reporting.Reports.Report;

/// <summary>Writes a report in the form that the name of its file asks for, and what goes with it.</summary>
sealed class WrittenReport(CommandSession session)
{
    const int Columns = 80;

    public int Write(ReportInput input, string? path, string? tables, string? cards, CardScheme scheme)
    {
        if (session.AsJson) session.Write(null, JsonOutput.List(input.Judgements.Select(each => each.Score.ToJson())));
        else if (path is null) session.Write(null, Text(input, unfolded: false));
        if (path is not null) session.Write(path, Rendered(input, path));
        if (tables is not null) OutputFolder.Write(tables, Tables(input));
        if (cards is not null) OutputFolder.Write(cards, WrittenCards.Of(input, scheme, session.Culture));
        if (!session.AsJson) Say(path, tables, cards);
        return ExitCode.Done;
    }

    byte[] Rendered(ReportInput input, string path) => Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".html" or ".htm" => Report.Html(input, session.Culture, session.Cancellation),
        ".md" or ".markdown" => Encoding.UTF8.GetBytes(Report.Markdown(input, session.Culture, session.Cancellation)),
        _ => Text(input, unfolded: true),
    };

    byte[] Text(ReportInput input, bool unfolded) => Encoding.UTF8.GetBytes(Report.Text(input, session.Culture, Columns, unfolded, session.Cancellation));

    static ImmutableArray<PaperFile> Tables(ReportInput input) =>
        [.. Report.Tables(input).SelectMany(table => new PaperFile[] { new($"{table.Name}.csv", CsvForm.Of(table)), new($"{table.Name}.tex", LatexForm.Of(table)) })];

    void Say(string? path, string? tables, string? cards)
    {
        if (path is not null) session.Canvas.Line($"Report written to {path}.");
        if (tables is not null) session.Canvas.Line($"Tables written to {tables}.");
        if (cards is not null) session.Canvas.Line($"Cards written to {cards}.");
    }
}
