using System.Text;

namespace FixScore.Browser.Tests;

/// <summary>Pages are valid HTML in the eyes of checkers that others wrote.</summary>
public sealed class MarkupTests : IDisposable
{
    readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("fixscore-markup-");

    // A property of SVG 2, chapter 13 (Painting), that its list lacks; and its guess at the language, which names of one letter lead astray.
    static readonly string[] Passed = ["CSS: \u201Cpaint-order\u201D", "This document appears to be written in "];

    public static TheoryData<string> Names => Pages.Names;

    public void Dispose() => folder.Delete(recursive: true);

    // One run for all pages, because most of its time is the start; a wrong one among them shows that it looks.
    [NuCheckerFact]
    public async Task The_Nu_Html_Checker_of_the_W3C_finds_neither_errors_nor_warnings()
    {
        var wrong = Written("wrong", """<!DOCTYPE html><html lang="en"><title>t</title><p><b><li>one</li></b></html>"""u8.ToArray());
        var said = await Installed.Run(Installed.Java!, ["-Dstdout.encoding=UTF-8", "-Dstderr.encoding=UTF-8", "-Dfile.encoding=UTF-8", "-jar", Installed.NuChecker!, "--also-check-css", "--format", "gnu", wrong, .. Pages.All.Select(page => Written(page.Name, Pages.Render(page.Name)))]);
        var lines = said.Split('\n', StringSplitOptions.RemoveEmptyEntries).ToLookup(line => line.Contains("/wrong.html\"", StringComparison.Ordinal));
        Assert.Contains(lines[true], line => line.Contains("not allowed as child of element", StringComparison.Ordinal));
        Found.Nothing(lines[false].Where(line => !Passed.Any(each => line.Contains(each, StringComparison.Ordinal))), "Nu Html Checker");
    }

    [TidyTheory]
    [MemberData(nameof(Names))]
    public async Task Html_Tidy_finds_neither_errors_nor_warnings(string name) =>
        Found.Nothing((await Tidy(Written(name, Pages.Render(name)))).Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => !IsOfSummary(line)), "Tidy");

    // Headings are allowed in a summary (HTML Standard 4.11.2); HTML Tidy 5.6 does not know it yet.
    static bool IsOfSummary(string line) => line.Contains("summary>", StringComparison.Ordinal);

    [TidyTheory]
    [InlineData("<!DOCTYPE html><title>t</title><p>one</b></p>", "discarding unexpected </b>")]
    public async Task Html_Tidy_finds_what_is_wrong(string page, string says) =>
        Assert.Contains(says, await Tidy(Written("wrong", Encoding.UTF8.GetBytes(page))), StringComparison.Ordinal);

    static Task<string> Tidy(string file) => Installed.Run(Installed.Tidy!, "-quiet", "-errors", "-utf8", file);

    string Written(string name, byte[] page)
    {
        var file = Path.Combine(folder.FullName, name + ".html");
        File.WriteAllBytes(file, page);
        return file;
    }
}
