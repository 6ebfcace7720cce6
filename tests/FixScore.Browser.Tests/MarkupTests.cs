namespace FixScore.Browser.Tests;

/// <summary>Pages are valid HTML in the eyes of checkers that others wrote.</summary>
public sealed class MarkupTests : IDisposable
{
    readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("fixscore-markup-");

    public static TheoryData<string> Names => Pages.Names;

    public void Dispose() => folder.Delete(recursive: true);

    // One run for all pages: most of its time is the start.
    [NuCheckerFact]
    public async Task The_Nu_Html_Checker_of_the_W3C_finds_neither_errors_nor_warnings() =>
        Assert.Equal("", await Nu(Pages.All.Select(page => Written(page.Name, page.Render()))));

    [NuCheckerFact]
    public async Task The_Nu_Html_Checker_finds_what_is_wrong() =>
        Assert.Contains("Element “li” not allowed as child of element “p”", await Nu([Written("wrong", """<!DOCTYPE html><html lang="en"><title>t</title><p><li>one</li></p></html>"""u8.ToArray())]), StringComparison.Ordinal);

    [TidyTheory]
    [MemberData(nameof(Names))]
    public async Task Html_Tidy_finds_neither_errors_nor_warnings(string name) =>
        Assert.Equal("", await Tidy(Written(name, Pages.All.Single(page => page.Name == name).Render())));

    static Task<string> Nu(IEnumerable<string> files) => Installed.Run(Installed.Java!, ["-jar", Installed.NuChecker!, "--also-check-css", "--format", "text", .. files]);

    static Task<string> Tidy(string file) => Installed.Run(Installed.Tidy!, "-quiet", "-errors", "-utf8", file);

    string Written(string name, byte[] page)
    {
        var file = Path.Combine(folder.FullName, name + ".html");
        File.WriteAllBytes(file, page);
        return file;
    }
}
