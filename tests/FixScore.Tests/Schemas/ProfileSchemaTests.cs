using System.Text;
using System.Text.Json;
using FixScore.Tests.Criteria;
using Json.Schema;
using Snapshooter.Xunit;

namespace FixScore.Tests.Schemas;

/// <summary>The schema of profiles knows the criteria that are installed.</summary>
public sealed class ProfileSchemaTests
{
    static readonly JsonSchema Installed = JsonSchemas.From(FixScore.Schemas.ProfileFor(FakePlugin.Catalogue));

    [Theory]
    [InlineData("every-option", "{}")]
    [InlineData("every-option", """{ "share": 0.25, "most": 7, "strict": true, "shade": "dark-blue", "noLevel": "lowest" }""")]
    [InlineData("every-option", """{ "steps": [{ "atLeast": 2, "points": 10 }], "reuse": { "neither": 3 }, "ignored": ["gasket", "acme.seal"] }""")]
    [InlineData("fastener-diversity", """{ "bands": [{ "at": 1, "points": 10 }] }""")]
    [InlineData("documentation", "{}")]
    public void Options_that_the_criterion_declares_are_taken(string criterion, string options) => AssertTakes(true, criterion, options);

    [Theory]
    [InlineData("every-option", """{ "shares": 0.25 }""")]
    [InlineData("every-option", """{ "share": 1.5 }""")]
    [InlineData("every-option", """{ "share": true }""")]
    [InlineData("every-option", """{ "most": 0 }""")]
    [InlineData("every-option", """{ "most": 2.5 }""")]
    [InlineData("every-option", """{ "strict": "yes" }""")]
    [InlineData("every-option", """{ "shade": "green" }""")]
    [InlineData("every-option", """{ "steps": [] }""")]
    [InlineData("every-option", """{ "reuse": { "anything": 3 } }""")]
    [InlineData("every-option", """{ "ignored": ["No Slug"] }""")]
    [InlineData("documentation", """{ "bands": [{ "at": 1, "points": 10 }] }""")]
    [InlineData("acme.nothing", "{}")]
    public void Other_options_and_criteria_are_refused(string criterion, string options) => AssertTakes(false, criterion, options);

    // The reader agrees on each of these.
    static void AssertTakes(bool taken, string criterion, string options)
    {
        var profile = Texts.Merged(Texts.Profile, $$"""{ "root": { "id": "root", "criterion": "{{criterion}}", "options": {{options}} } }""");
        Assert.Equal(taken, Installed.Takes(Encoding.UTF8.GetBytes(profile)));
        Assert.Equal(taken, Texts.ProfileOf(profile).IsValid);
    }

    [Fact]
    public void What_the_general_schema_takes_is_taken_where_its_criteria_are_installed() =>
        Assert.True(Installed.Takes(Encoding.UTF8.GetBytes(Texts.Example("profile.example.json"))));

    [Fact]
    public void Without_criteria_a_leaf_can_name_none() =>
        Assert.False(JsonSchemas.From(FixScore.Schemas.ProfileFor(Catalogue.Empty)).Takes(Encoding.UTF8.GetBytes(Texts.Profile)));

    [Fact]
    public void Options_are_described_by_kind_bounds_unit_default_and_text()
    {
        using var schema = JsonDocument.Parse(FixScore.Schemas.ProfileFor(FakePlugin.Catalogue));
        Snapshot.Match(schema.RootElement.GetProperty("$defs").GetProperty("options.every-option").GetRawText());
    }

    [Fact]
    public void Criteria_are_named_and_lead_to_their_options()
    {
        var schema = JsonElement.Parse(FixScore.Schemas.ProfileFor(FakePlugin.Catalogue)).GetProperty("$defs");
        var node = schema.GetProperty("node");
        Snapshot.Match(string.Join("\n", node.GetProperty("properties").GetProperty("criterion").GetRawText(), node.GetProperty("allOf")[0].GetRawText(), schema.GetProperty("options.documentation").GetRawText()));
    }

    [Fact]
    public void Without_criteria_the_schema_says_so() => Assert.Equal(
        """{"not":{},"description":"In a leaf: id of a criterion. None is installed."}""",
        JsonSerializer.Serialize(JsonElement.Parse(FixScore.Schemas.ProfileFor(Catalogue.Empty)).GetProperty("$defs").GetProperty("node").GetProperty("properties").GetProperty("criterion")));

    [Fact]
    public void The_same_catalogue_gives_the_same_text() => Assert.Equal(FixScore.Schemas.ProfileFor(FakePlugin.Catalogue), FixScore.Schemas.ProfileFor(Catalogue.Of(new FakePlugin())));

    [Theory]
    [InlineData("urn:fixscore:record:1")]
    [InlineData("urn:fixscore:profile:1")]
    [InlineData("urn:fixscore:score:1")]
    public void The_published_schemas_are_in_the_assembly(string id) => Assert.Contains(
        id, ((string[])[FixScore.Schemas.Record, FixScore.Schemas.Profile, FixScore.Schemas.Score]).Select(text => JsonElement.Parse(text).GetProperty("$id").GetString()));
}
