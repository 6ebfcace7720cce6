using Spectre.Console;
using Spectre.Console.Rendering;

namespace FixScore.Cli.Terminal;

/// <summary>Prints for people: headings, wrapped text, tables. Text is never read as styling.</summary>
sealed class Canvas
{
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

    public void Heading(string text) => Line(text, new Style(decoration: Decoration.Bold));

    public void Line(string text = "") => Line(text, Style.Plain);

    /// <summary>Wrapped text, set in by two spaces for each level; what follows the first line hangs by the mark's width.</summary>
    public void Item(int level, string mark, string text, bool quiet = false)
    {
        var grid = new Grid().AddColumn(new GridColumn().NoWrap().PadLeft(2 * level).PadRight(mark.Length > 0 ? 1 : 0).Width(mark.Length)).AddColumn(new GridColumn().Padding(0, 0));
        grid.AddRow(Cell(mark), new Text(Plain.Text(text), quiet ? new Style(decoration: Decoration.Dim) : Style.Plain));
        Print(grid);
    }

    public void Table(IEnumerable<(string Title, bool Numeric)> columns, IEnumerable<string[]> rows)
    {
        var table = new Table().Border(TableBorder.Simple);
        foreach (var (title, numeric) in columns)
            table.AddColumn(numeric ? new TableColumn(Cell(title)).RightAligned().NoWrap() : new TableColumn(Cell(title)));
        foreach (var row in rows) table.AddRow(row.Select(Cell));
        Print(table);
    }

    void Line(string text, Style style) => Print(new Text(Plain.Text(text), style), lineBreak: true);

    static IRenderable Cell(string text) => new Text(Plain.Text(text));

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
