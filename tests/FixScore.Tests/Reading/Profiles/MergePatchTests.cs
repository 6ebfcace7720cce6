using System.Text.Json.Nodes;
using FixScore.Reading.Profiles;

namespace FixScore.Tests.Reading.Profiles;

public sealed class MergePatchTests
{
    // RFC 7396, appendix A: all fifteen cases.
    [Theory]
    [InlineData("""{"a":"b"}""", """{"a":"c"}""", """{"a":"c"}""")]
    [InlineData("""{"a":"b"}""", """{"b":"c"}""", """{"a":"b","b":"c"}""")]
    [InlineData("""{"a":"b"}""", """{"a":null}""", "{}")]
    [InlineData("""{"a":"b","b":"c"}""", """{"a":null}""", """{"b":"c"}""")]
    [InlineData("""{"a":["b"]}""", """{"a":"c"}""", """{"a":"c"}""")]
    [InlineData("""{"a":"c"}""", """{"a":["b"]}""", """{"a":["b"]}""")]
    [InlineData("""{"a":{"b":"c"}}""", """{"a":{"b":"d","c":null}}""", """{"a":{"b":"d"}}""")]
    [InlineData("""{"a":[{"b":"c"}]}""", """{"a":[1]}""", """{"a":[1]}""")]
    [InlineData("""["a","b"]""", """["c","d"]""", """["c","d"]""")]
    [InlineData("""{"a":"b"}""", """["c"]""", """["c"]""")]
    [InlineData("""{"a":"foo"}""", "null", "null")]
    [InlineData("""{"a":"foo"}""", "\"bar\"", "\"bar\"")]
    [InlineData("""{"e":null}""", """{"a":1}""", """{"e":null,"a":1}""")]
    [InlineData("[1,2]", """{"a":"b","c":null}""", """{"a":"b"}""")]
    [InlineData("{}", """{"a":{"bb":{"ccc":null}}}""", """{"a":{"bb":{}}}""")]
    public void The_examples_of_the_standard_give_its_results(string target, string patch, string expected)
    {
        var (before, change) = (JsonNode.Parse(target), JsonNode.Parse(patch));
        Assert.Equal(expected, MergePatch.Apply(before, change)?.ToJsonString() ?? "null");
        Assert.Equal((target, patch), (before?.ToJsonString() ?? "null", change?.ToJsonString() ?? "null"));
    }
}
