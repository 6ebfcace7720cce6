using System.Text.Json.Nodes;
using FixScore.Reading.Profiles;

namespace FixScore.Tests.Reading.Profiles;

public sealed class NodePatchesTests
{
    [Theory]
    [InlineData("""{"b":{"weight":7}}""", """{"root":{"id":"a","of":[{"id":"b","weight":7},{"id":"c","of":[{"id":"d"}]}]}}""")]
    [InlineData("""{"b":null}""", """{"root":{"id":"a","of":[{"id":"c","of":[{"id":"d"}]}]}}""")]
    [InlineData("""{"d":{"note":"x"}}""", """{"root":{"id":"a","of":[{"id":"b","weight":1},{"id":"c","of":[{"id":"d","note":"x"}]}]}}""")]
    [InlineData("""{"b":{"weight":null}}""", """{"root":{"id":"a","of":[{"id":"b"},{"id":"c","of":[{"id":"d"}]}]}}""")]
    [InlineData("""{"a":{"title":"T"}}""", """{"root":{"id":"a","of":[{"id":"b","weight":1},{"id":"c","of":[{"id":"d"}]}],"title":"T"}}""")]
    [InlineData("""{"c":{"of":[{"id":"e"}]},"e":{"weight":2}}""", """{"root":{"id":"a","of":[{"id":"b","weight":1},{"id":"c","of":[{"id":"e","weight":2}]}]}}""")]
    public void A_patch_changes_the_node_it_names(string patches, string expected)
    {
        var profile = Sample();
        Assert.Empty(NodePatches.Apply(profile, JsonNode.Parse(patches)!.AsObject(), Pointer.Root.Child("nodes")));
        Assert.Equal(expected, profile.ToJsonString());
    }

    [Theory]
    [InlineData("""{"e":{}}""", "node-unknown /nodes/e")]
    [InlineData("""{"a":null}""", "root-removed /nodes/a")]
    [InlineData("""{"b":1}""", "wrong-type /nodes/b")]
    [InlineData("""{"b":[]}""", "wrong-type /nodes/b")]
    [InlineData("""{"c":null,"d":{}}""", "node-unknown /nodes/d")]
    public void A_patch_that_fits_nowhere_is_told(string patches, string told) => Assert.Equal(
        [told],
        NodePatches.Apply(Sample(), JsonNode.Parse(patches)!.AsObject(), Pointer.Root.Child("nodes")).Select(problem => $"{problem.Code} {problem.At}"));

    static JsonObject Sample() => JsonNode.Parse("""{"root":{"id":"a","of":[{"id":"b","weight":1},{"id":"c","of":[{"id":"d"}]}]}}""")!.AsObject();
}
