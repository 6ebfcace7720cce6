using System.Collections.Immutable;
using System.Globalization;
using FixScore.Reporting.Blocks;
using FixScore.Reporting.Html;
using FixScore.Reporting.Tables;

namespace FixScore.Reporting.Reports;

/// <summary>The published verdict, in several forms made of the same words.</summary>
/// <remarks>The same input and culture give the same bytes. Text of records is escaped. Stateless, so safe to use from any thread.</remarks>
public static class Report
{
    /// <summary>One self-contained page in UTF-8: no script, no network.</summary>
    /// <param name="input">What is told.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <param name="cancellation">Cancels the search of routes.</param>
    /// <exception cref="ArgumentException">There are no scores.</exception>
    public static byte[] Html(ReportInput input, CultureInfo culture, CancellationToken cancellation = default)
    {
        var document = ReportDocument.Of(input, culture, cancellation);
        return ReportPage.Render(document);
    }

    /// <summary>The report as Markdown, for a tender file; pictures are told in words.</summary>
    /// <inheritdoc cref="Html"/>
    public static string Markdown(ReportInput input, CultureInfo culture, CancellationToken cancellation = default)
    {
        var document = ReportDocument.Of(input, culture, cancellation);
        return $"# {MarkdownForm.Escaped(document.Title)}\n\n{MarkdownForm.Of(document.Blocks)}";
    }

    /// <summary>The report as plain text.</summary>
    /// <param name="input">What is told.</param>
    /// <param name="culture">How numbers are written.</param>
    /// <param name="width">Columns, 40 at least.</param>
    /// <param name="unfolded">Whether everything is told, and not only what sections come to that a page shows closed.</param>
    /// <param name="cancellation">Cancels the search of routes.</param>
    /// <exception cref="ArgumentException">There are no scores, or the width is less than 40.</exception>
    public static string Text(ReportInput input, CultureInfo culture, int width = 80, bool unfolded = true, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 40);
        var document = ReportDocument.Of(input, culture, cancellation);
        return TextForm.Of([new Section(document.Title, document.Blocks)], width, unfolded);
    }

    /// <summary>Tables for spreadsheets and papers: every line of every score, and what the comparison found.</summary>
    /// <param name="input">What is told.</param>
    public static ImmutableArray<ResultTable> Tables(ReportInput input) =>
    [
        ReportTables.Lines(input),
        .. input.Comparison is { } comparison ? ComparisonTables.Of(comparison) : [],
        .. StudyTables.Of(input.Studies),
    ];
}
