using System.Text.Json;
using FixScore.Reading;

namespace FixScore.Tests.Reading;

public sealed class JsonPointersTests
{
    // RFC 6901, section 5: the document and what each pointer evaluates to.
    const string Sample = """
        {"foo":["bar","baz"],"":0,"a/b":1,"c%d":2,"e^f":3,"g|h":4,"i\\j":5,"k\"l":6," ":7,"m~n":8}
        """;

    [Theory]
    [InlineData("/foo", """["bar","baz"]""")]
    [InlineData("/foo/0", "\"bar\"")]
    [InlineData("/", "0")]
    [InlineData("/a~1b", "1")]
    [InlineData("/c%d", "2")]
    [InlineData("/e^f", "3")]
    [InlineData("/g|h", "4")]
    [InlineData("/i\\j", "5")]
    [InlineData("/k\"l", "6")]
    [InlineData("/ ", "7")]
    [InlineData("/m~0n", "8")]
    public void The_examples_of_the_standard_lead_where_it_says(string pointer, string expected) =>
        Assert.Equal(expected, JsonPointers.Resolve(JsonElement.Parse(Sample), pointer)?.GetRawText());

    [Fact]
    public void The_empty_pointer_is_the_whole() => Assert.Equal(JsonValueKind.Object, JsonPointers.Resolve(JsonElement.Parse(Sample), "")?.ValueKind);

    // RFC 6901, sections 3 and 4: what the syntax does not allow, and what is not there.
    [Theory]
    [InlineData("foo")]
    [InlineData("/foo/2")]
    [InlineData("/foo/-")]
    [InlineData("/foo/00")]
    [InlineData("/foo/01")]
    [InlineData("/foo/+1")]
    [InlineData("/foo/0/x")]
    [InlineData("/foo/99999999999")]
    [InlineData("/m~n")]
    [InlineData("/m~2n")]
    [InlineData("/m~")]
    [InlineData("/bar")]
    public void Other_pointers_lead_nowhere(string pointer) => Assert.Null(JsonPointers.Resolve(JsonElement.Parse(Sample), pointer));

    // RFC 6901, section 3: ~ becomes ~0 and / becomes ~1.
    [Fact]
    public void Names_are_escaped_as_the_standard_says() => Assert.Equal("/a~1b/m~0n/~01", Pointer.Root.Child("a/b").Child("m~n").Child("~1").Text);
}
