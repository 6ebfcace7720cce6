using Spectre.Console;
using Spectre.Console.Rendering;

namespace FixScore.Reporting.Blocks;

/// <summary>Blocks as plain text of a stated width, headings underlined.</summary>
static class TextForm
{
    const int LongestHeading = 240;

    /// <summary>The blocks; lines end with a line feed and never with a blank.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <param name="width">Columns.</param>
    /// <param name="unfolded">Whether folded sections are told in full, and not only what they come to.</param>
    public static string Of(IEnumerable<Block> blocks, int width, bool unfolded)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No, ColorSystem = ColorSystemSupport.NoColors, Interactive = InteractionSupport.No, Out = new AnsiConsoleOutput(TextWriter.Null) });
        console.Profile.Width = width;
        console.Profile.Capabilities.Unicode = true;
        var text = string.Concat(blocks.SelectMany(block => Of(block, 1, width, unfolded)).Select(part => Printed(console, part) + "\n"));
        return text.TrimEnd('\n') + "\n";
    }

    static string Printed(IAnsiConsole console, IRenderable part)
    {
        var text = string.Concat(part.Render(RenderOptions.Create(console), console.Profile.Width).Select(segment => segment.IsLineBreak ? "\n" : segment.Text));
        return string.Concat(text.TrimEnd('\n').Split('\n').SkipWhile(string.IsNullOrWhiteSpace).Select(line => $"{line.TrimEnd()}\n"));
    }

    static IEnumerable<IRenderable> Of(Block block, int level, int width, bool unfolded) => block switch
    {
        Section { IsFolded: true } section when !unfolded => [new Text(PlainText.Of($"{section.Title}: {section.Gist}"))],
        Section section => [Heading(section.Title, level), .. Gist(section), .. section.Blocks.SelectMany(each => Of(each, level + 1, width, unfolded))],
        Prose prose => [new Text(Lead(prose.Tone) + PlainText.Of(prose.Text))],
        Items items => items.Entries.IsEmpty ? [] : [new Rows(items.Entries.Select(Of))],
        Grid grid => TextTable.Of(grid, width),
        Picture { IsToldBeside: true } => [],
        Picture { AsTable: { } table } => TextTable.Of(table, width),
        Picture picture => [new Text(PlainText.Of(picture.InWords))],
        Verbatim verbatim => [new Rows(verbatim.Text.Split('\n').SelectMany(line => Continued(PlainText.Of(line), width)).Select(line => new Text(line)))],
        Attachments => [],
        _ => throw new ArgumentException($"No form for {block.GetType().Name}.", nameof(block)),
    };

    // A command that is too long goes on after a backslash (POSIX.1-2024, Shell Command Language 2.2.1), so that it can still be copied.
    static IEnumerable<string> Continued(string command, int width)
    {
        var line = " ";
        foreach (var word in command.Split(' '))
        {
            if (line.Length + word.Length + 3 > width && line.Trim().Length > 0)
            {
                yield return $"{line} \\";
                line = "   ";
            }
            line += $" {word}";
        }
        yield return line;
    }

    static Text Heading(string title, int level)
    {
        var text = PlainText.Of(title, LongestHeading);
        return new(level > 2 ? text : $"{text}\n{new string(level == 1 ? '=' : '-', Math.Min(text.Length, 78))}");
    }

    static IEnumerable<IRenderable> Gist(Section section) => section.Gist.Length > 0 ? [new Text(PlainText.Of(section.Gist))] : [];

    static string Lead(Tone tone) => tone switch { Tone.Mind => "Mind: ", Tone.Open => "Not known: ", _ => "" };

    static IRenderable Of(Item item)
    {
        var mark = item.Tone switch { Tone.Mind => "!", Tone.Open => "?", _ => "-" };
        var label = item.Label.Length > 0 ? $"{item.Label}: " : "";
        return new Spectre.Console.Grid().AddColumn(new Spectre.Console.GridColumn().NoWrap().PadLeft(2 * (item.Level + 1)).PadRight(1).Width(1)).AddColumn(new Spectre.Console.GridColumn().Padding(0, 0))
            .AddRow(new Text(mark), new Text(PlainText.Of(label + item.Text)));
    }
}
