namespace FixScore.Cli.Commands.Sheet;

/// <summary>How a bench sheet is written.</summary>
enum SheetForm
{
    Text,
    Markdown,
    Html,
}
