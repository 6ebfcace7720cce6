using Spectre.Console;
using Spectre.Console.Rendering;

namespace FixScore.Cli.Terminal;

/// <summary>Prints for people: headings, wrapped text, tables. Text is never read as styling.</summary>
sealed class Canvas
{
    const int WidestCell = 60;
    const int LongestHeading = 240;
    const int LongestText = 2000;

    static readonly Style Strong = new(decoration: Decoration.Bold);
    static readonly Style Quiet = new(decoration: Decoration.Dim);

    readonly IAnsiConsole console;

    public Canvas(Streams streams)
    {
        console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = streams.Styled ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = streams.Styled ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(streams.Out),
        });
        console.Profile.Width = streams.Width;
        console.Profile.Capabilities.Unicode = true;
    }

    public void Heading(string text) => Line(Plain.Text(text, LongestHeading), Strong);

    public void Line(string text = "") => Line(text, Style.Plain);

    /// <summary>A line to copy: never wrapped.</summary>
    public void Code(string text) => console.Profile.Out.Writer.WriteLine(Plain.Text(text));

    /// <summary>Wrapped text, set in by two spaces for each level; what follows the first line hangs by the mark's width.</summary>
    public void Item(int level, string mark, string text, bool quiet = false)
    {
        var grid = new Grid().AddColumn(Fixed(mark.Length, 2 * level, mark.Length > 0 ? 1 : 0)).AddColumn(new GridColumn().Padding(0, 0));
        Print(grid.AddRow(Cell(mark), new Text(Plain.Text(text, LongestText), quiet ? Quiet : Style.Plain)));
    }

    /// <summary>Terms with what they mean beside them.</summary>
    public void Terms(IEnumerable<(string Term, string Text)> rows)
    {
        var all = rows.ToArray();
        var grid = new Grid().AddColumn(Fixed(all.Max(row => row.Term.Length), 2, 2)).AddColumn(new GridColumn().Padding(0, 0));
        foreach (var (term, text) in all) grid.AddRow(Cell(term), new Text(Plain.Text(text)));
        Print(grid);
    }

    /// <summary>A table with a blank line above and below. Numbers stand to the right and are never broken.</summary>
    /// <param name="columns">What stands above.</param>
    /// <param name="rows">The cells.</param>
    /// <param name="foldedAt">Compounds longer than this go on below after a hyphen, so that columns stay narrow.</param>
    public void Table(IEnumerable<(string Title, bool Numeric)> columns, IEnumerable<string[]> rows, int foldedAt = WidestCell)
    {
        var table = new Table().Border(TableBorder.Simple);
        foreach (var (title, numeric) in columns)
            table.AddColumn(numeric ? new TableColumn(Cell(title)).RightAligned().NoWrap() : new TableColumn(Cell(title)));
        foreach (var row in rows) table.AddRow(row.Select(cell => new Text(Plain.Folded(Plain.Text(cell, WidestCell), foldedAt))));
        Print(table);
    }

    static GridColumn Fixed(int width, int left, int right) => new GridColumn().NoWrap().PadLeft(left).PadRight(right).Width(width);

    static IRenderable Cell(string text) => new Text(Plain.Text(text, WidestCell));

    void Line(string text, Style style) => Print(new Text(Plain.Text(text, LongestText), style), lineBreak: true);

    // Lines carry no blanks at their ends, so that redirected output can be compared.
    void Print(IRenderable content, bool lineBreak = false)
    {
        if (console.Profile.Capabilities.Ansi)
        {
            console.Write(content);
            if (lineBreak) console.WriteLine();
            return;
        }
        var text = string.Concat(content.Render(RenderOptions.Create(console), console.Profile.Width).Select(segment => segment.IsLineBreak ? "\n" : segment.Text));
        foreach (var line in text.TrimEnd('\n').Split('\n')) console.Profile.Out.Writer.WriteLine(line.TrimEnd());
    }
}
