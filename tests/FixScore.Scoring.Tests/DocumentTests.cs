using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using FixScore.Records;
using FixScore.Testing;
using Json.Schema;

namespace FixScore.Scoring.Tests;

public sealed class DocumentTests
{
    const string More = """
        "partSets": { "main": { "battery": 3, "display-assembly": 1 } },
        "gates": [ { "id": "g", "when": { "node": "a", "atMost": 20 }, "cap": 45, "reason": "because" } ],
        "classes": [ { "label": "upper", "from": 50 }, { "label": "lower", "from": 0 } ],
        "readings": [ { "id": "r", "point": "p", "source": "s", "taken": "t", "otherwise": [ { "text": "o", "nodes": { "a": { "weight": 9 } } } ] } ],
        "notices": ["mind this"]
        """;

    static readonly Profile Profile = Make.Profile(
        Make.Group("weighted-arithmetic", Make.Leaf("a", "1", "t.a"), Make.Leaf("b", "2", "t.b"),
            Make.Leaf("p", "4", "t.part", """ "over": { "set": "main", "instances": "lowest", "absent": "skip" } """)), More);

    static RecordBuilder Record() => Make.Record().Observe("t.a", new Quantity(10, 30)).Observe("t.b", (Quantity)70).About("cell", "t.part", 33).About("screen", "t.part", new Quantity(1, 2));

    static JsonElement Json(ScoreDocument score) => JsonDocument.Parse(score.ToJson()).RootElement;

    [Fact]
    public void It_is_what_the_published_schema_describes()
    {
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Schemas", "score.schema.json")));
        var result = schema.Evaluate(Json(Record().Score(Profile)), new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("\n", (result.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}"))));
    }

    [Fact]
    public void Contributions_of_the_lines_below_add_up_to_each_line_and_all_to_the_total_before_gates()
    {
        var score = Record().Score(Profile);
        foreach (var node in score.Nodes.Where(node => node.Contribution is not null))
        {
            var below = score.Nodes.Where(each => each.Path.StartsWith(node.Path + "/", StringComparison.Ordinal) && !each.Path[(node.Path.Length + 1)..].Contains('/', StringComparison.Ordinal)).ToArray();
            if (below.Length == 0) continue;
            Assert.Equal(node.Contribution!.Value.Low, below.Sum(each => each.Contribution!.Value.Low));
            Assert.Equal(node.Contribution!.Value.High, below.Sum(each => each.Contribution!.Value.High));
        }
        Assert.Equal(new Ends(score.BeforeGates.Low, score.BeforeGates.High), score.Nodes[0].Contribution);
    }

    [Fact]
    public void Headroom_is_what_the_total_gains_when_the_line_has_its_maximum()
    {
        var score = Record().Score(Profile);
        var raised = Make.Record().Observe("t.a", (Quantity)100).Observe("t.b", (Quantity)70).About("cell", "t.part", 33).About("screen", "t.part", new Quantity(1, 2)).Score(Profile);
        Assert.Equal(raised.Total.Low - score.Total.Low, score.At("root/a").Headroom);
        var cell = Make.Record().Observe("t.a", new Quantity(10, 30)).Observe("t.b", (Quantity)70).About("cell", "t.part", 100).About("screen", "t.part", new Quantity(1, 2)).Score(Profile);
        Assert.Equal(cell.Total.Low - score.Total.Low, score.At("root/p/battery/cell").Headroom);
    }

    [Fact]
    public void Its_digest_is_that_of_its_content()
    {
        var json = Json(Record().Score(Profile));
        Assert.True(Verifier.HasOwnDigest(json));
        var altered = JsonDocument.Parse(Encoding.UTF8.GetString(Record().Score(Profile).ToJson()).Replace("because", "whatever", StringComparison.Ordinal)).RootElement;
        Assert.False(Verifier.HasOwnDigest(altered));
    }

    [Fact]
    public void Verifying_the_same_is_identical()
    {
        var score = Record().Score(Profile);
        Assert.Equal(Verdict.Identical, Verifier.Compare(Json(score), score).Verdict);
    }

    [Theory]
    [InlineData("observed 70", "watched 70", "/nodes/2/reasons/0/text")]
    [InlineData("Observed t.a", "Seen t.a", "/nodes/1/title")]
    public void Verifying_another_text_is_equal_and_names_it(string find, string put, string pointer)
    {
        var score = Record().Score(Profile);
        var other = JsonDocument.Parse(Encoding.UTF8.GetString(score.ToJson()).Replace(find, put, StringComparison.Ordinal)).RootElement;
        var verification = Verifier.Compare(other, score);
        Assert.Equal(Verdict.Equal, verification.Verdict);
        Assert.Contains(pointer, verification.Differences.Select(difference => difference.At.Text));
    }

    [Fact]
    public void Verifying_another_version_of_the_kernel_is_equal()
    {
        var score = Record().Score(Profile);
        var other = Json(score with { KernelVersion = "9.9.9" });
        Assert.Equal(Verdict.Equal, Verifier.Compare(other, score).Verdict);
    }

    [Fact]
    public void Verifying_another_record_names_the_first_difference()
    {
        var score = Record().Score(Profile);
        var verification = Verifier.Compare(Json(Record().About("cell", "t.part", 1).Observe("t.d", (Quantity)1).Score(Profile) with { Total = new(1, 2) }), score);
        Assert.Equal(Verdict.Different, verification.Verdict);
        Assert.Equal("/total/low", verification.Differences[0].At.Text);
        Assert.Equal("\"1\"", verification.Differences[0].Given);
    }

    [Fact]
    public void A_document_altered_only_in_its_digest_is_different()
    {
        var score = Record().Score(Profile);
        var text = Encoding.UTF8.GetString(score.ToJson());
        var digest = Json(score).GetProperty("digest").GetString()!;
        var verification = Verifier.Compare(JsonDocument.Parse(text.Replace(digest, "sha256:" + new string('1', 64), StringComparison.Ordinal)).RootElement, score);
        Assert.Equal((Verdict.Different, "/digest"), (verification.Verdict, verification.Differences[0].At.Text));
    }

    [Fact]
    public void Only_plugins_that_the_profile_uses_are_named() =>
        Assert.Equal(["FixScore.Scoring.Tests"], Record().Score(Profile).Plugins.Select(plugin => plugin.Id));

    [Fact]
    public void Notices_are_shown_with_the_result() => Assert.Equal("mind this", Assert.Single(Record().Score(Profile).Notes));

    [Fact]
    public void The_order_of_observations_does_not_change_a_byte_of_what_counts()
    {
        var reversed = Record().With(record => record with { Observations = EntryList.Of(record.Observations.Reverse().ToImmutableArray()) }).Score(Profile);
        var score = Record().Score(Profile);
        Assert.Equal(score.Nodes.Select(node => (node.Path, node.Value, node.Headroom, node.Contribution)), reversed.Nodes.Select(node => (node.Path, node.Value, node.Headroom, node.Contribution)));
    }
}
