using System.Text;

namespace FixScore.Reporting.Html;

/// <summary>The frame of a self-contained page: styles within it, no script, no network.</summary>
static class HtmlPage
{
    public static string Of(string title, IEnumerable<string> styles, Markup body) =>
        $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta name="color-scheme" content="light dark">
        <title>{((Markup)title).Html}</title>
        <style>
        {string.Concat(styles)}</style>
        </head>
        <body>
        {body.Html}
        </body>
        </html>

        """.ReplaceLineEndings("\n");

    /// <summary>A style sheet that is embedded in this assembly.</summary>
    public static string Style(string name)
    {
        using var stream = typeof(HtmlPage).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
