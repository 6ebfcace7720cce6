using System.Globalization;

namespace FixScore.Tests.Reading;

/// <summary>What is read and what is told never depends on where it runs.</summary>
public sealed class CultureTests
{
    static readonly string[] Here = Everything("");

    // tr-TR has a dotless i, ar-SA another calendar and other digits, de-DE a decimal comma.
    [Theory]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    [InlineData("de-DE")]
    public void Every_problem_and_every_value_is_the_same(string culture) => Assert.Equal(Here, Everything(culture));

    static string[] Everything(string culture)
    {
        var before = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
            return [.. Corpus.Files.SelectMany(Told), .. Texts.Demos.Select(Written)];
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = before;
        }
    }

    static IEnumerable<string> Told(CorpusFile file) => file.Read().Problems.Select(problem =>
        $"{file.File} {problem.Problem.Code} {problem.Problem.At} {problem.Line.ToString(CultureInfo.InvariantCulture)} {problem.Problem.Message} {problem.Problem.Hint}");

    static string Written(string file) => System.Text.Encoding.UTF8.GetString(RecordFile.ToJson(RecordFile.Load(file).Record));
}
