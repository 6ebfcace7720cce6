using System.Text;
using FixScore.Reading;
using FixScore.Tests.Criteria;

namespace FixScore.Tests.Reading;

/// <summary>Names with half of a surrogate pair (RFC 8259, section 8.2, warns of them) are refused where they stand, whatever is asked of the object.</summary>
public sealed class BrokenNamesTests
{
    static (string At, int Offset)? First(string text) =>
        BrokenNames.First(Encoding.UTF8.GetBytes(text)) is { } found ? (found.Problem.At.Text, found.Offset) : null;

    [Theory]
    [InlineData("""{"\ud800":0}""", "", 0)]
    [InlineData("""{"\uDBFFx":0}""", "", 0)]
    [InlineData("""{"a\udc00":0}""", "", 0)]
    [InlineData("""{"\ud800\n":0}""", "", 0)]
    [InlineData("""{"\udc00\ud800":0}""", "", 0)]
    [InlineData("""{"\ud83d\ude00\ud83d":0}""", "", 0)]
    [InlineData("""{"a":{"b":[1,{},[2],{"\ud800":0}]}}""", "/a/b/3", 20)]
    [InlineData("""{"a":[{"b":1},{"c":[]}],"d":{"\ud800":0}}""", "/d", 28)]
    [InlineData("""[[],"\ud800",{"\ud800":0}]""", "/2", 13)]
    public void The_object_around_it_is_named(string text, string at, int offset) => Assert.Equal((at, offset), First(text));

    [Theory]
    [InlineData("""{"\ud83d\uDE00":0}""")]
    [InlineData("""{"\\ud800":0}""")]
    [InlineData("""{"\u0061\\\ud83d\ude00":"\ud800"}""")]
    [InlineData("""["\ud800"]""")]
    [InlineData("""{"\u00e9":{"\ufffd":0}}""")]
    public void Names_that_are_text_pass(string text) => Assert.Null(First(text));

    [Theory]
    [InlineData("""{"\ud800t":{}}""")]
    [InlineData("""{"format":"fixscore-profile/1","id":"\ud800","version":"1.0.0"}""")]
    public void A_library_leaves_out_what_nobody_can_ask_for(string text) =>
        Assert.Empty(ProfileLibrary.Of([("test", Encoding.UTF8.GetBytes(text))]).Entries);

    [Fact]
    public void A_base_with_such_a_name_is_told_where_it_is_extended()
    {
        var found = new OneBase("""{"\ud800":0}""");
        var read = ProfileFile.Read("""{"extends":{"id":"x","version":"1.0.0"}}"""u8.ToArray(), FakePlugin.Catalogue, found);
        Assert.Equal(["/extends lone-surrogate"], read.Problems.Select(each => $"{each.Problem.At} {each.Problem.Code}"));
    }

    sealed class OneBase(string text) : IProfileSource
    {
        public ReadOnlyMemory<byte>? Find(string id, string version) => Encoding.UTF8.GetBytes(text);
    }
}
