using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Scoring.Tests;

public sealed class GateTests
{
    static Profile Gated(string when, string classes = "") => Make.Profile(
        Make.Group("weighted-arithmetic", Make.Leaf("a", "1", "t.a"), Make.Leaf("b", "1", "t.b")),
        $$"""
        "gates": [ { "id": "g", "when": {{when}}, "cap": 35, "reason": "because" } ] {{(classes.Length > 0 ? "," + classes : "")}}
        """);

    static RecordBuilder Record(Quantity a, Quantity b) => Make.Record().Observe("t.a", a).Observe("t.b", b);

    [Theory]
    [InlineData("""{ "node": "a", "atMost": 20 }""", true)]
    [InlineData("""{ "node": "a", "below": 20 }""", false)]
    [InlineData("""{ "node": "a", "below": 20.0001 }""", true)]
    public void A_gate_closes_at_or_below_its_limit_and_caps_the_total(string when, bool closes)
    {
        var score = Record(20, 90).Score(Gated(when));
        Assert.Equal((Interval)55, score.BeforeGates);
        Assert.Equal(closes ? (Interval)35 : 55, score.Total);
        Assert.Equal(closes ? [GateEnds.Both] : [], score.Gates.Select(gate => gate.Ends));
    }

    [Fact]
    public void A_gate_that_only_the_low_end_reaches_caps_only_the_low_end()
    {
        var score = Record(new(10, 60), 90).Score(Gated("""{ "node": "a", "atMost": 20 }"""));
        Assert.Equal(new Interval(50, 75), score.BeforeGates);
        Assert.Equal(new Interval(35, 75), score.Total);
        Assert.Equal(GateEnds.Low, Assert.Single(score.Gates).Ends);
    }

    [Fact]
    public void A_gate_never_raises_a_total() => Assert.Equal((Interval)15, Record(20, 10).Score(Gated("""{ "node": "a", "atMost": 20 }""")).Total);

    [Fact]
    public void A_node_for_gates_only_does_not_count_but_caps()
    {
        var profile = Make.Profile(Make.Group("weighted-arithmetic", Make.Leaf("a", "1", "t.a"), """{ "id": "b", "role": "gate-only", "criterion": "t.b" }"""),
            """ "gates": [ { "id": "g", "when": { "node": "b", "below": 50 }, "cap": 35, "reason": "because" } ] """);
        Assert.Equal((Interval)90, Record(90, 50).Score(profile).Total);
        var capped = Record(90, 49).Score(profile);
        Assert.Equal((Interval)35, capped.Total);
        Assert.Equal((0m, 55m), (capped.At("root/b").Share, capped.At("root/b").Headroom));
        Assert.Null(capped.At("root/b").Contribution);
    }

    [Fact]
    public void A_gate_on_a_part_looks_at_the_role_after_its_instances()
    {
        var profile = Make.Profile(
            Make.Group("weighted-arithmetic", Make.Leaf("p", "1", "t.part", """ "over": { "set": "main", "instances": "mean", "absent": "skip" } """)),
            """
            "partSets": { "main": { "battery": 1, "display-assembly": 1 } },
            "gates": [ { "id": "g", "when": { "node": "p", "part": "battery", "atMost": 30 }, "cap": 35, "reason": "because" } ]
            """);
        var record = Make.Record().Part("cell-2", "battery").About("cell", "t.part", 10).About("screen", "t.part", 100);
        Assert.Equal((Interval)35, record.About("cell-2", "t.part", 50).Score(profile).Total);
        var open = Make.Record().Part("cell-2", "battery").About("cell", "t.part", 10).About("cell-2", "t.part", 52).About("screen", "t.part", 100).Score(profile);
        Assert.Equal((Interval)65.5m, open.Total); // mean of 10 and 52 is 31, above the limit: ((31 + 100) / 2)
    }

    [Fact]
    public void A_gate_on_a_leaf_under_a_spread_group_looks_at_that_leaf_for_the_role()
    {
        var profile = Make.Profile("""
            { "id": "root", "aggregate": "weighted-arithmetic", "over": { "set": "main", "instances": "lowest", "absent": "skip" },
              "of": [ { "id": "p", "weight": 1, "criterion": "t.part" }, { "id": "q", "weight": 1, "criterion": "t.part-b" } ] }
            """, """
            "partSets": { "main": { "battery": 1 } },
            "gates": [ { "id": "g", "when": { "node": "q", "part": "battery", "atMost": 0 }, "cap": 5, "reason": "because" } ]
            """);
        var record = Make.Record().Part("cell-2", "battery").About("cell", "t.part", 80).About("cell", "t.part-b", 20).About("cell-2", "t.part", 100).About("cell-2", "t.part-b", 0);
        Assert.Equal((Interval)5, record.Score(profile).Total);
    }

    const string Classes = """ "classes": [ { "label": "upper", "from": 50 }, { "label": "lower", "from": 0 } ] """;

    [Fact]
    public void Classes_are_of_both_ends_and_decided_on_the_exact_total()
    {
        var score = Record(new(10, 60), 60).Score(Gated("""{ "node": "a", "below": 0 }""", Classes));
        Assert.Equal(new ClassRange("lower", "upper"), score.Class);
        Assert.Equal("lower", Record(49.98m, 49.98m).Score(Gated("""{ "node": "a", "below": 0 }""", Classes)).Class!.Low);
    }

    [Fact]
    public void A_profile_may_decide_classes_on_what_is_shown()
    {
        var score = Record(49.98m, 49.98m).Score(Gated("""{ "node": "a", "below": 0 }""", Classes + """, "classesOn": "shown" """));
        Assert.Equal("upper", score.Class!.Low);
    }

    [Fact]
    public void A_carried_value_is_rounded_before_anything_uses_it()
    {
        var profile = Make.Profile(Make.Group("weighted-arithmetic",
            Make.Leaf("a", "1", "t.a", """ "carry": { "decimals": 0, "rounding": "down" } """), Make.Leaf("b", "1", "t.b")));
        Assert.Equal((Interval)15, Record(10.9m, 20).Score(profile).Total);
    }

    [Fact]
    public void Another_reading_is_decisive_when_it_changes_the_class()
    {
        var readings = Classes + """
            , "readings": [
              { "id": "minor", "point": "p", "source": "s", "taken": "t", "otherwise": [ { "text": "o", "nodes": { "a": { "weight": 2 } } } ] },
              { "id": "major", "point": "p", "source": "s", "taken": "t", "otherwise": [ { "text": "o", "nodes": { "b": null } }, { "text": "o2", "nodes": {} } ] } ]
            """;
        var score = Record(30, 80).Score(Gated("""{ "node": "a", "below": 0 }""", readings));
        Assert.Equal([("minor", true), ("major", true)], score.Readings.Select(reading => (reading.Id, reading.Decisive)));
        Assert.Equal([(Interval)30, (Interval)55], score.Readings[1].Otherwise.Select(other => other.Total));
        var calm = Record(60, 80).Score(Gated("""{ "node": "a", "below": 0 }""", readings));
        Assert.Equal([false, false], calm.Readings.Select(reading => reading.Decisive));
    }

    [Fact]
    public void A_profile_refuses_devices_it_is_not_for()
    {
        var profile = Make.Profile(Make.Group("minimum", Make.Leaf("a", "1", "t.a")), """ "appliesTo": { "kinds": ["laptop"], "foldable": false } """);
        var refusal = Assert.Throws<ProfileMismatchException>(() => Record(1, 1).Score(profile));
        Assert.Equal(("profile-not-for-kind", "/device/kind"), (refusal.Problem.Code, refusal.Problem.At.Text));
    }
}
