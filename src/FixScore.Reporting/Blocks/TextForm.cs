using System.Collections.Immutable;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace FixScore.Reporting.Blocks;

/// <summary>Blocks as plain text of a stated width, headings underlined; with bars of block characters where a table has them.</summary>
static class TextForm
{
    const int WidestCell = 48;
    const int BarWidth = 16;

    /// <summary>The blocks; lines end with a line feed and never with a blank.</summary>
    public static string Of(IEnumerable<Block> blocks, int width)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No, ColorSystem = ColorSystemSupport.NoColors, Interactive = InteractionSupport.No, Out = new AnsiConsoleOutput(TextWriter.Null) });
        console.Profile.Width = width;
        console.Profile.Capabilities.Unicode = true;
        var text = string.Concat(blocks.SelectMany(block => Of(block, 1)).Select(part => Printed(console, part) + "\n"));
        return text.TrimEnd('\n') + "\n";
    }

    static string Printed(IAnsiConsole console, IRenderable part)
    {
        var text = string.Concat(part.Render(RenderOptions.Create(console), console.Profile.Width).Select(segment => segment.IsLineBreak ? "\n" : segment.Text));
        return string.Concat(text.TrimEnd('\n').Split('\n').SkipWhile(string.IsNullOrWhiteSpace).Select(line => $"{line.TrimEnd()}\n"));
    }

    static IEnumerable<IRenderable> Of(Block block, int level) => block switch
    {
        Section section => section.Blocks.SelectMany(each => Of(each, level + 1)).Prepend(Heading(section.Title, level)),
        Prose prose => [new Text(Lead(prose.Tone) + PlainText.Of(prose.Text))],
        Items items => items.Entries.IsEmpty ? [] : [new Rows(items.Entries.Select(Of))],
        Grid grid => grid.Rows.IsEmpty ? [] : Of(grid),
        Picture picture => [new Text(PlainText.Of(picture.InWords))],
        Verbatim verbatim => [new Text(string.Join('\n', verbatim.Text.Split('\n').Select(line => $"  {PlainText.Of(line)}")), Style.Plain) { Overflow = Overflow.Fold }],
        _ => throw new ArgumentException($"No form for {block.GetType().Name}.", nameof(block)),
    };

    static Text Heading(string title, int level)
    {
        var text = PlainText.Of(title, 240);
        return new(level > 2 ? text : $"{text}\n{new string(level == 1 ? '=' : '-', Math.Min(text.Length, 78))}");
    }

    static string Lead(Tone tone) => tone switch { Tone.Mind => "Mind: ", Tone.Open => "Not known: ", _ => "" };

    static IRenderable Of(Item item)
    {
        var mark = item.Tone switch { Tone.Mind => "!", Tone.Open => "?", _ => "-" };
        var label = item.Label.Length > 0 ? $"{item.Label}: " : "";
        return new Spectre.Console.Grid().AddColumn(new Spectre.Console.GridColumn().NoWrap().PadLeft(2 * (item.Level + 1)).PadRight(1).Width(1)).AddColumn(new Spectre.Console.GridColumn().Padding(0, 0))
            .AddRow(new Text(mark), new Text(PlainText.Of(label + item.Text)));
    }

    static IEnumerable<IRenderable> Of(Grid grid)
    {
        if (grid.Caption.Length > 0) yield return new Text(PlainText.Of(grid.Caption));
        var table = new Table().Border(TableBorder.Simple);
        foreach (var column in grid.Columns)
            table.AddColumn(column.Kind is GridKind.Number ? new TableColumn(Cell(column.Title)).RightAligned().NoWrap() : column.Kind is GridKind.Bar ? new TableColumn(Cell("")).NoWrap() : new TableColumn(Cell(column.Title)));
        foreach (var row in grid.Rows) table.AddRow(row.Select((cell, index) => grid.Columns[index].Kind is GridKind.Bar ? new Text(Bar(cell)) : Cell(new string(' ', 2 * cell.Depth) + cell.Text)));
        yield return table;
    }

    // Full blocks up to the low end, light ones from there to the high end.
    static string Bar(GridCell cell)
    {
        if (cell.Bar is not { } bar) return "";
        var (low, high) = (Blocks(bar.Value.Low, bar.Scale), Blocks(bar.Value.High, bar.Scale));
        return new string('\u2588', low) + new string('\u2591', high - low) + new string('\u00B7', BarWidth - high);
    }

    static int Blocks(decimal value, Scale scale) => (int)decimal.Round((value - scale.Min) / (scale.Max - scale.Min) * BarWidth, MidpointRounding.AwayFromZero);

    static Text Cell(string text) => new(PlainText.Of(text, WidestCell));
}
