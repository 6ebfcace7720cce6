using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Score;

/// <summary>The lines of a score as a table. Columns that say nothing are left out.</summary>
sealed class LineView(Canvas canvas, CultureInfo culture)
{
    readonly Shown shown = new(culture);

    public void Show(Judgement judgement)
    {
        var lines = judgement.Score.Nodes.Where(IsShown).ToArray();
        var adding = lines.Any(line => line.Contribution is not null && Depth(line) > 0);
        canvas.Table([("Line", false), ("Points", true), ("Weight", true), .. If(adding, ("Of the total", true)), ("Headroom", true)],
            lines.Select(line => Row(line, Indent(lines, line), adding)));
    }

    string[] Row(ScoreNode line, int indent, bool adding) => [
        new string(' ', 2 * indent) + line.Title,
        shown.Points(line.Shown),
        line.Weight is { } weight ? shown.Number(weight) : "",
        .. If(adding, line.Contribution is { } ends ? shown.Points(ends) : ""),
        shown.Short(line.Headroom)];

    static T[] If<T>(bool isWanted, T item) => isWanted ? [item] : [];

    // Parts are named in the notes; here their roles are enough.
    static bool IsShown(ScoreNode line) => line.Weight is not null || line.Options is not null || Depth(line) == 0;

    static int Indent(ScoreNode[] lines, ScoreNode line) => lines.Count(other => line.Path.StartsWith(other.Path + "/", StringComparison.Ordinal));

    static int Depth(ScoreNode line) => line.Path.Count(letter => letter == '/');
}
