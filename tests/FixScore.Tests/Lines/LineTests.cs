using System.Text;
using System.Text.Json;
using FixScore.Lines;

namespace FixScore.Tests.Lines;

/// <summary>Records as lines: which lines there are, and what becomes of bad ones.</summary>
public sealed class LineTests
{
    const int Block = 128 * 1024;

    [Theory]
    [InlineData("", "")]
    [InlineData("a", "1 a")]
    [InlineData("a\n", "1 a")]
    [InlineData("a\nb", "1 a|2 b")]
    [InlineData("a\r\n \t\r\n\nb\r", "1 a\r|4 b\r")]
    [InlineData("\n\n", "")]
    [InlineData("\uFEFFa\n\uFEFFb", "1 a|2 \uFEFFb")]
    [InlineData("\uFEFF\na", "2 a")]
    public void Lines_are_counted_from_one_and_blank_ones_passed_over(string text, string lines) => Assert.Equal(lines, string.Join('|', Read(Encoding.UTF8.GetBytes(text))));

    [Theory]
    [InlineData(Block - 1)]
    [InlineData(Block)]
    [InlineData(Block + 1)]
    [InlineData((3 * Block) + 7)]
    public void A_line_may_be_longer_than_what_is_read_at_once(int length) => Assert.Equal(
        [$"1 {new string('x', length)}", "2 end"], Read(Encoding.UTF8.GetBytes(new string('x', length) + "\nend")));

    [Fact]
    public void What_comes_in_small_pieces_is_put_together() => Assert.Equal(["1 abc", "2 de"], Read(new Drops("abc\nde"u8.ToArray())));

    // By the schema of problems in a line: code, severity, pointer, line of the input, column, message, hint.
    [Fact]
    public void A_bad_line_is_written_with_its_problems_and_its_number()
    {
        var line = new ScoredLine(7, null, [new(Problem.Of(Severity.Warning, Pointer.Root.Child("a"), "code-of-it", "It's <{x}>.", "Do.", ("x", "ü")), 1, 5)], false);
        Assert.Equal(
            """{"line":7,"problems":[{"code":"code-of-it","severity":"warning","pointer":"/a","line":7,"column":5,"message":"It's <ü>.","hint":"Do."}]}""" + "\n",
            Encoding.UTF8.GetString(line.ToJson()));
    }

    [Fact]
    public void Good_and_bad_lines_come_out_as_they_went_in()
    {
        var scored = Scored(string.Join('\n', Enumerable.Range(0, 600).Select(i => i % 3 == 0 ? OneLine : $"bad {i}"))).ToArray();
        Assert.Equal(Enumerable.Range(1, 600).Select(number => (long)number), scored.Select(line => line.Number));
        Assert.Equal(Enumerable.Range(0, 600).Select(i => i % 3 == 0), scored.Select(line => line.Score is not null));
        Assert.All(scored.Where(line => line.Score is not null), line => Assert.Equal(scored[0].ToJson(), line.ToJson()));
        Assert.All(scored, line => Assert.False(line.HasFailure));
        Assert.All(scored.Where(line => line.Score is null), line => Assert.Equal("json.syntax", Assert.Single(line.Problems).Problem.Code));
    }

    [Fact]
    public void A_good_line_is_the_document_on_one_line()
    {
        var json = Encoding.UTF8.GetString(Assert.Single(Scored(OneLine)).ToJson());
        Assert.Equal(json.Length - 1, json.IndexOf('\n', StringComparison.Ordinal));
        Assert.Equal("fixscore-score/1", JsonElement.Parse(json).GetProperty("format").GetString());
    }

    [Fact]
    public void A_record_that_the_profile_is_not_for_is_a_bad_line()
    {
        var profile = Texts.ProfileWith("""{ "appliesTo": { "kinds": ["kettle"] } }""");
        var line = Assert.Single(RecordLines.Score(Input(OneLine), profile.Value!, each => each, Criteria.FakePlugin.Catalogue));
        Assert.Equal(("profile-not-for-kind", 1, 1), (line.Problems[0].Problem.Code, line.Problems[0].Line, line.Problems[0].Column));
    }

    [Fact]
    public void Lines_can_be_cancelled() => Assert.Throws<OperationCanceledException>(() =>
        RecordLines.Score(Input(OneLine), Texts.ProfileOf(Texts.Profile).Value!, each => each, Criteria.FakePlugin.Catalogue, cancellation: new CancellationToken(canceled: true)).ToArray());

    static string OneLine { get; } = JsonSerializer.Serialize(JsonElement.Parse(Texts.Tiny));

    static IEnumerable<ScoredLine> Scored(string text) => RecordLines.Score(Input(text), Texts.ProfileOf(Texts.Profile).Value!, each => each, Criteria.FakePlugin.Catalogue);

    static MemoryStream Input(string text) => new(Encoding.UTF8.GetBytes(text));

    static IEnumerable<string> Read(byte[] bytes) => Read(new MemoryStream(bytes));

    static IEnumerable<string> Read(Stream input)
    {
        var reader = new LineReader(input);
        while (reader.Next() is { } line) yield return $"{line.Number} {Encoding.UTF8.GetString(line.Text.Span)}";
    }

    /// <summary>Gives a byte at a time, as slow pipes do.</summary>
    sealed class Drops(byte[] bytes) : MemoryStream(bytes)
    {
        public override int Read(byte[] buffer, int offset, int count) => base.Read(buffer, offset, Math.Min(count, 1));
    }
}
