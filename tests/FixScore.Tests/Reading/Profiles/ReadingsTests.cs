namespace FixScore.Tests.Reading.Profiles;

/// <summary>Each other reading of a source is a whole profile.</summary>
public sealed class ReadingsTests
{
    [Fact]
    public void Another_reading_is_the_profile_with_its_patch()
    {
        var profile = Texts.ProfileWith(Reading("""{ "glue": { "weight": 5 }, "fasteners": { "unknown": "worst" } }""")).OrThrow();
        var reading = Assert.Single(profile.Readings);
        Assert.Equal(("weights", "How much", "Annex", "Twice"), (reading.Id, reading.Point, reading.Source, reading.Taken));
        var other = Assert.Single(reading.Otherwise);
        var nodes = ((GroupNode)other.Profile.Root).Of;
        Assert.Equal(("Five times", 5m, UnknownPolicy.Worst), (other.Text, nodes[1].Weight, ((LeafNode)nodes[0]).Unknown));
        Assert.Equal(2m, ((GroupNode)profile.Root).Of[1].Weight);
        Assert.Empty(other.Profile.Readings);
    }

    [Fact]
    public void What_is_wrong_with_the_profile_itself_is_told_once() => Assert.Equal(
        ["scale-reversed /scale"],
        Texts.ProfileOf(Texts.Merged(Texts.Merged(Texts.Profile, Reading("""{ "glue": { "weight": 5 } }""")), """{ "scale": { "min": 9, "max": 1, "decimals": 0, "rounding": "down" } }""")).Told());

    [Theory]
    [InlineData("""{ "glue": { "weight": -1 } }""", "weight-not-positive /readings/0/otherwise/0/nodes/glue/weight")]
    [InlineData("""{ "glue": { "weight": null } }""", "missing-member /readings/0/otherwise/0/nodes/glue")]
    [InlineData("""{ "root": { "of": [] } }""", "too-few /readings/0/otherwise/0/nodes/root/of")]
    [InlineData("""{ "root": null }""", "root-removed /readings/0/otherwise/0/nodes/root")]
    public void A_patch_that_spoils_the_profile_is_told_at_the_patch(string patches, string told) => Assert.Equal([told], Texts.ProfileWith(Reading(patches)).Told());

    [Theory]
    [InlineData("[]", "wrong-type")]
    [InlineData("7", "wrong-type")]
    public void Patches_of_a_reading_are_an_object(string patches, string code) => Assert.Equal([$"{code} /readings/0/otherwise/0/nodes"], Texts.ProfileWith(Reading(patches)).Told());

    [Fact]
    public void A_point_may_stand_without_another_reading() => Assert.Empty(Assert.Single(Texts.ProfileWith(
        """{ "readings": [{ "id": "r", "point": "p", "source": "s", "taken": "t", "otherwise": [] }] }""").OrThrow().Readings).Otherwise);

    [Fact]
    public void Entries_of_a_profile_may_carry_remarks() => Assert.Empty(Texts.ProfileWith("""
        {
          "gates": [{ "id": "g", "when": { "node": "glue", "part": "battery", "below": 2 }, "cap": 5, "reason": "why", "note": "n", "evidence": ["e"] }],
          "classes": [{ "label": "all", "from": 0, "note": "n", "evidence": ["e"] }],
          "sources": [{ "at": "/scale", "locator": "here", "standing": "own", "note": "n", "evidence": ["e"] }],
          "readings": [{ "id": "r", "point": "p", "source": "s", "taken": "t", "note": "n", "evidence": ["e"], "otherwise": [{ "text": "o", "nodes": {}, "note": "n", "evidence": ["e"] }] }],
          "root": {
            "id": "root", "note": "n", "evidence": ["e"], "aggregate": "minimum",
            "of": [
              { "id": "fasteners", "weight": 1, "note": "n", "criterion": "fastener-diversity", "options": { "bands": [{ "atMost": 2, "points": 10, "note": "n", "evidence": ["e"] }] } },
              { "id": "glue", "weight": 2, "criterion": "adhesive-strength", "over": { "note": "n", "choose": [{ "set": "main", "note": "n", "evidence": ["e"] }], "instances": "lowest", "absent": "skip" } }
            ]
          }
        }
        """).Told());

    static string Reading(string patches) => $$"""
        { "readings": [{ "id": "weights", "point": "How much", "source": "Annex", "taken": "Twice", "otherwise": [{ "text": "Five times", "nodes": {{patches}} }] }] }
        """;
}
