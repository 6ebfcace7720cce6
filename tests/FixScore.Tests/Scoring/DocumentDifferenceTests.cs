using System.Text.Json;
using FixScore.Scoring;

namespace FixScore.Tests.Scoring;

/// <summary>Differences between score documents: where, what stands there, and whether it is a difference of the score.</summary>
public sealed class DocumentDifferenceTests
{
    [Theory]
    [InlineData("""{"total":1}""", """{"total":2}""", "/total 1 2 counts")]
    [InlineData("""{"total":1}""", """{"total":"1"}""", "/total 1 \"1\" counts")]
    [InlineData("""{"total":1}""", """{"total":1.0}""", "")]
    [InlineData("""{"total":1}""", """{}""", "/total 1  counts")]
    [InlineData("""{}""", """{"total":1}""", "/total  1 counts")]
    [InlineData("""{"$schema":"x","total":1}""", """{"total":1}""", "")]
    [InlineData("""{"a":{"$schema":"x"}}""", """{"a":{}}""", "/a/$schema \"x\"  counts")]
    [InlineData("""{"a":[1,2,3]}""", """{"a":[1]}""", "/a/1 2  counts|/a/2 3  counts")]
    [InlineData("""{"a":[1]}""", """{"a":[1,2,3]}""", "/a/1  2 counts|/a/2  3 counts")]
    [InlineData("""{"a":[1,2]}""", """{"a":[2,1]}""", "/a/0 1 2 counts|/a/1 2 1 counts")]
    [InlineData("""{"a":{"b":[{"c":true}]}}""", """{"a":{"b":[{"c":false}]}}""", "/a/b/0/c true false counts")]
    [InlineData("""{"a":null}""", """{"a":null}""", "")]
    public void Each_is_found_at_its_place(string given, string computed, string differences) => Told(given, computed, differences);

    [Theory]
    [InlineData("""{"kernel":{"version":1}}""", """{"kernel":{"version":2}}""", "/kernel/version 1 2")]
    [InlineData("""{"kernel":{"name":1}}""", """{"kernel":{"name":2}}""", "/kernel/name 1 2 counts")]
    [InlineData("""{"plugins":[{"version":1,"digest":1,"id":1}]}""", """{"plugins":[{"version":2,"digest":2,"id":2}]}""", "/plugins/0/version 1 2|/plugins/0/digest 1 2|/plugins/0/id 1 2 counts")]
    [InlineData("""{"plugins":[{"dependencies":[{"file":1}]}]}""", """{"plugins":[{"dependencies":[{"file":2}]}]}""", "/plugins/0/dependencies/0/file 1 2")]
    [InlineData("""{"plugins":[{}]}""", """{"plugins":[{"dependencies":[]}]}""", "/plugins/0/dependencies  []")]
    [InlineData("""{"notes":["a"]}""", """{"notes":["b"]}""", "/notes/0 \"a\" \"b\"")]
    [InlineData("""{"notes":[["a"]]}""", """{"notes":[["b"]]}""", "/notes/0/0 \"a\" \"b\" counts")]
    [InlineData("""{"gates":[{"reason":1,"cap":1}]}""", """{"gates":[{"reason":2,"cap":2}]}""", "/gates/0/reason 1 2|/gates/0/cap 1 2 counts")]
    [InlineData("""{"readings":[{"point":1,"taken":1,"id":1}]}""", """{"readings":[{"point":2,"taken":2,"id":2}]}""", "/readings/0/point 1 2|/readings/0/taken 1 2|/readings/0/id 1 2 counts")]
    [InlineData("""{"nodes":[{"title":1,"reasons":[{"text":1,"what":1,"code":1}]}]}""", """{"nodes":[{"title":2,"reasons":[{"text":2,"what":2,"code":2}]}]}""",
        "/nodes/0/title 1 2|/nodes/0/reasons/0/text 1 2|/nodes/0/reasons/0/what 1 2|/nodes/0/reasons/0/code 1 2 counts")]
    [InlineData("""{"nodes":[{"values":{"text":1},"options":{"title":1}}]}""", """{"nodes":[{"values":{"text":2},"options":{"title":2}}]}""", "/nodes/0/values/text 1 2 counts|/nodes/0/options/title 1 2 counts")]
    [InlineData("""{"text":1}""", """{"text":2}""", "/text 1 2 counts")]
    public void Versions_and_words_are_no_difference_of_the_score(string given, string computed, string differences) => Told(given, computed, differences);

    [Theory]
    [InlineData("""{"digest":"a"}""", """{"digest":"b"}""", "/digest \"a\" \"b\" counts")]
    [InlineData("""{"digest":"a","total":1}""", """{"digest":"b","total":2}""", "/digest \"a\" \"b\"|/total 1 2 counts")]
    [InlineData("""{"record":{"digest":"a"},"total":1}""", """{"record":{"digest":"b"},"total":2}""", "/record/digest \"a\" \"b\" counts|/total 1 2 counts")]
    public void The_digest_of_the_document_counts_when_nothing_else_differs(string given, string computed, string differences) => Told(given, computed, differences);

    static void Told(string given, string computed, string differences) => Assert.Equal(differences, string.Join('|',
        DocumentDifferences.Between(JsonElement.Parse(given), JsonElement.Parse(computed)).Select(each => $"{each.At.Text} {each.Given} {each.Computed}{(each.Counts ? " counts" : "")}")));
}
