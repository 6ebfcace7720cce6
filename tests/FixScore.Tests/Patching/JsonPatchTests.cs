using System.Text.Json.Nodes;
using FixScore.Patching;

namespace FixScore.Tests.Patching;

/// <summary>JSON Patch against the examples of RFC 6902, appendix A (from memory), and its error rules (section 5).</summary>
public sealed class JsonPatchTests
{
    [Theory]
    [InlineData("A.1", """{"foo":"bar"}""", """[{"op":"add","path":"/baz","value":"qux"}]""", """{"baz":"qux","foo":"bar"}""")]
    [InlineData("A.2", """{"foo":["bar","baz"]}""", """[{"op":"add","path":"/foo/1","value":"qux"}]""", """{"foo":["bar","qux","baz"]}""")]
    [InlineData("A.3", """{"baz":"qux","foo":"bar"}""", """[{"op":"remove","path":"/baz"}]""", """{"foo":"bar"}""")]
    [InlineData("A.4", """{"foo":["bar","qux","baz"]}""", """[{"op":"remove","path":"/foo/1"}]""", """{"foo":["bar","baz"]}""")]
    [InlineData("A.5", """{"baz":"qux","foo":"bar"}""", """[{"op":"replace","path":"/baz","value":"boo"}]""", """{"baz":"boo","foo":"bar"}""")]
    [InlineData("A.6", """{"foo":{"bar":"baz","waldo":"fred"},"qux":{"corge":"grault"}}""", """[{"op":"move","from":"/foo/waldo","path":"/qux/thud"}]""",
        """{"foo":{"bar":"baz"},"qux":{"corge":"grault","thud":"fred"}}""")]
    [InlineData("A.7", """{"foo":["all","grass","cows","eat"]}""", """[{"op":"move","from":"/foo/1","path":"/foo/3"}]""", """{"foo":["all","cows","eat","grass"]}""")]
    [InlineData("A.8", """{"baz":"qux","foo":["a",2,"c"]}""", """[{"op":"test","path":"/baz","value":"qux"},{"op":"test","path":"/foo/1","value":2}]""", """{"baz":"qux","foo":["a",2,"c"]}""")]
    [InlineData("A.10", """{"foo":"bar"}""", """[{"op":"add","path":"/child","value":{"grandchild":{}}}]""", """{"foo":"bar","child":{"grandchild":{}}}""")]
    [InlineData("A.11", """{"foo":"bar"}""", """[{"op":"add","path":"/baz","value":"qux","xyz":123}]""", """{"foo":"bar","baz":"qux"}""")]
    [InlineData("A.14", """{"/":9,"~1":10}""", """[{"op":"test","path":"/~01","value":10}]""", """{"/":9,"~1":10}""")]
    [InlineData("A.16", """{"foo":["bar"]}""", """[{"op":"add","path":"/foo/-","value":["abc","def"]}]""", """{"foo":["bar",["abc","def"]]}""")]
    [InlineData("4.5, whole document copied into itself", """{"a":1}""", """[{"op":"copy","from":"","path":"/b"}]""", """{"a":1,"b":{"a":1}}""")]
    [InlineData("4.1, whole document", """{"a":1}""", """[{"op":"add","path":"","value":[2]}]""", "[2]")]
    [InlineData("4.3, to null", """{"a":1}""", """[{"op":"replace","path":"/a","value":null}]""", """{"a":null}""")]
    public void Examples_of_the_standard(string example, string document, string patch, string expected)
    {
        var before = JsonNode.Parse(document);
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(expected), JsonPatch.Apply(before, patch)), example);
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(document), before), "The document handed in was changed.");
    }

    [Theory]
    [InlineData("A.9", """{"baz":"qux"}""", """[{"op":"test","path":"/baz","value":"bar"}]""")]
    [InlineData("A.12", """{"foo":"bar"}""", """[{"op":"add","path":"/baz/bat","value":"qux"}]""")]
    [InlineData("A.13", """{"foo":"bar"}""", """[{"op":"add","path":"/baz","value":"qux","op":"remove"}]""")]
    [InlineData("A.15", """{"/":9,"~1":10}""", """[{"op":"test","path":"/~01","value":"10"}]""")]
    [InlineData("4.1, index beyond the end", """{"foo":[1]}""", """[{"op":"add","path":"/foo/2","value":2}]""")]
    [InlineData("4.2, nothing there", """{"foo":1}""", """[{"op":"remove","path":"/bar"}]""")]
    [InlineData("4.3, nothing there", """{"foo":1}""", """[{"op":"replace","path":"/bar","value":1}]""")]
    [InlineData("4.4, into itself", """{"foo":{"bar":1}}""", """[{"op":"move","from":"/foo","path":"/foo/bar"}]""")]
    [InlineData("RFC 6901 section 4, leading zero", """{"foo":[1,2]}""", """[{"op":"remove","path":"/foo/01"}]""")]
    [InlineData("RFC 6901 section 4, the end names nothing", """{"foo":[1,2]}""", """[{"op":"remove","path":"/foo/-"}]""")]
    [InlineData("no pointer", """{"foo":1}""", """[{"op":"remove","path":"foo"}]""")]
    [InlineData("no such operation", """{"foo":1}""", """[{"op":"merge","path":"/foo","value":1}]""")]
    [InlineData("no value", """{"foo":1}""", """[{"op":"add","path":"/foo"}]""")]
    [InlineData("no list", """{"foo":1}""", """{"op":"remove","path":"/foo"}""")]
    [InlineData("no JSON", """{"foo":1}""", "[")]
    [InlineData("half of a surrogate pair", """{"foo":1}""", """[{"op":"remove","path":"/\ud800"}]""")]
    [InlineData("half of a surrogate pair in a name", """{"foo":1}""", """[{"\ud800":1,"op":"remove","path":"/foo"}]""")]
    public void What_cannot_be_done_is_refused_as_a_whole(string rule, string document, string patch)
    {
        var before = JsonNode.Parse(document);
        var failure = Assert.Throws<JsonPatchException>(() => JsonPatch.Apply(before, patch));
        Assert.True(failure.Message.Length > 0, rule);
        Assert.Equal(document, before!.ToJsonString());
    }

    [Fact]
    public void A_patch_tells_its_places_and_where_entries_move_up() => Assert.Equal(
        [new(new("/a/b"), false), new(new("/l/3"), true), new(new("/l/-"), false), new(new("/m/0"), true), new(new("/n"), false)],
        JsonPatch.Places("""
            [{"op":"add","path":"/a/b","value":1},{"op":"remove","path":"/l/3"},{"op":"add","path":"/l/-","value":1},{"op":"move","from":"/m/0","path":"/n"}]
            """));
}
