using System.Text;
using FixScore.Reading;

namespace FixScore.Tests.Reading;

public sealed class LocatorTests
{
    [Theory]
    [InlineData("{\"a\":1}", "/a", 1, 6)]
    [InlineData("{\t\"a\":\t1}", "/a", 1, 8)]
    [InlineData("{\r\n\"a\": 1}", "/a", 2, 6)]
    [InlineData("{\"é\":\"ü\",\"a\":1}", "/a", 1, 14)]
    [InlineData("{\"x\":\"漢字\",\"a\":1}", "/a", 1, 15)]
    [InlineData("[1,[2,3]]", "/1/1", 1, 7)]
    [InlineData("{\"a/b\":{\"c~d\":1}}", "/a~1b/c~0d", 1, 15)]
    [InlineData("{\"\\u0061\":1}", "/a", 1, 11)]
    public void Columns_count_characters_from_one(string text, string pointer, int line, int column) =>
        Assert.Equal((line, column), PlaceOf(text, pointer));

    // As editors count: a character beyond the basic plane takes two UTF-16 code units.
    [Fact]
    public void A_character_beyond_the_basic_plane_counts_twice() => Assert.Equal((1, 15), PlaceOf("{\"x\":\"😀\",\"a\":1}", "/a"));

    [Theory]
    [InlineData("/a/b/c", 1, 6)]
    [InlineData("/z", 1, 1)]
    public void What_is_not_there_is_told_where_it_is_missing(string pointer, int line, int column) =>
        Assert.Equal((line, column), PlaceOf("{\"a\":{}}", pointer));

    [Fact]
    public void A_name_is_meant_when_the_problem_is_about_the_name()
    {
        var located = Locate("{\n  \"wrong\": 1}", Wrong("/wrong", "unknown-member"));
        Assert.Equal((2, 3, "  \"wrong\": 1}", 7), (located[0].Line, located[0].Column, located[0].Source, located[0].Length));
    }

    [Fact]
    public void Problems_come_in_the_order_of_their_places() => Assert.Equal(
        ["/a", "/b/1", "/c"],
        Locate("{\"a\":1,\n\"b\":[1,2],\n\"c\":3}", Wrong("/c"), Wrong("/a"), Wrong("/b/1")).Select(each => each.Problem.At.Text));

    [Fact]
    public void A_long_line_is_shortened_between_characters()
    {
        var located = Locate("[\"x" + string.Concat(Enumerable.Repeat("😀", 200)) + "\",1]", Wrong("/1"));
        Assert.Equal(159, located[0].Source.Length);
        Assert.EndsWith("😀", located[0].Source, StringComparison.Ordinal);
        Assert.Equal(406, located[0].Column);
    }

    static (int, int) PlaceOf(string text, string pointer) => Locate(text, Wrong(pointer)) is [var found] ? (found.Line, found.Column) : default;

    static System.Collections.Immutable.ImmutableArray<LocatedProblem> Locate(string text, params Problem[] problems) =>
        Locator.Locate(Encoding.UTF8.GetBytes(text), problems);

    static Problem Wrong(string pointer, string code = "wrong") => Problem.Of(Severity.Error, new Pointer(pointer), code, "Wrong.", "Mend it.");
}
