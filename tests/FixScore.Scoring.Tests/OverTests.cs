using FixScore.Records;
using FixScore.Testing;

namespace FixScore.Scoring.Tests;

public sealed class OverTests
{
    const string Sets = """
        "partSets": { "main": { "battery": 3, "display-assembly": 1 }, "fold": { "battery": 1, "hinge": 1 } }
        """;

    static Profile Spread(string instances = "lowest", string absent = "skip", string more = "", string aggregate = "weighted-arithmetic") => Make.Profile(
        Make.Group("weighted-arithmetic", Make.Leaf("p", "1", "t.part", $$"""
            "over": { "set": "main", "aggregate": "{{aggregate}}", "instances": "{{instances}}", "absent": "{{absent}}" }
            """)), Sets + more);

    [Fact]
    public void A_part_criterion_spreads_over_the_roles_of_a_set()
    {
        var score = Make.Record().About("cell", "t.part", 40).About("screen", "t.part", 80).Score(Spread());
        Assert.Equal((Interval)50, score.Total);
        Assert.Equal((Interval)40, score.At("root/p/battery/cell").Value);
        Assert.Equal("Observed t.part", score.At("root/p").Title);
        Assert.Equal(new Ends(30, 30), score.At("root/p/battery/cell").Contribution);
    }

    [Theory]
    [InlineData("lowest", 30)]
    [InlineData("mean", 45)]
    public void Several_parts_of_one_role_count_as_the_lowest_or_the_mean(string instances, int battery)
    {
        var score = Make.Record().Part("cell-2", "battery").About("cell", "t.part", 30).About("cell-2", "t.part", 60).About("screen", "t.part", 80).Score(Spread(instances));
        Assert.Equal((Interval)battery, score.At("root/p/battery").Value);
        Assert.Equal(instances == "mean", score.At("root/p/battery/cell").Contribution is not null);
    }

    [Theory]
    [InlineData("top", 50)]
    [InlineData("skip", 40)]
    public void An_absent_role_counts_as_the_best_or_is_left_out(string absent, decimal expected)
    {
        var record = new RecordBuilder("x").Part("cell", "battery").Absent("display-assembly").About("cell", "t.part", 40);
        var total = record.Score(Spread(absent: absent)).Total;
        Assert.Equal(absent == "top" ? (Interval)55 : (Interval)expected, total); // (3 x 40 + 100) / 4, by hand
    }

    [Fact]
    public void A_role_that_was_not_recorded_is_the_whole_scale()
    {
        var score = new RecordBuilder("x").Part("cell", "battery").About("cell", "t.part", 40).Score(Spread());
        Assert.Equal(new Interval(30, 55), score.Total);
        Assert.Equal(0.75m, score.Coverage);
        Assert.Equal("/parts", Assert.Single(score.At("root/p/display-assembly").Missing).At.Text);
    }

    [Fact]
    public void A_group_is_judged_part_by_part_and_then_over_the_parts()
    {
        var profile = Make.Profile("""
            { "id": "root", "aggregate": "weighted-geometric",
              "over": { "set": "main", "aggregate": "minimum", "instances": "lowest", "absent": "skip" },
              "of": [ { "id": "p", "weight": 1, "criterion": "t.part" }, { "id": "q", "weight": 1, "criterion": "t.part-b" } ] }
            """, Sets);
        var score = Make.Record().About("cell", "t.part", 90).About("cell", "t.part-b", 10).About("screen", "t.part", 40).About("screen", "t.part-b", 90).Score(profile);
        Assert.Equal((Interval)30, score.At("root/battery/cell").Value); // sqrt(900), by hand
        Assert.Equal((Interval)60, score.At("root/display-assembly/screen").Value); // sqrt(3600), by hand
        Assert.Equal((Interval)30, score.Total);
        Assert.Equal((Interval)10, score.At("root/battery/cell/q").Value);
    }

    static Profile Choosing(string when) => Make.Profile(Make.Group("weighted-arithmetic", Make.Leaf("p", "1", "t.part", $$"""
        "over": { "choose": [ { "when": {{when}}, "set": "fold" }, { "set": "main" } ], "instances": "lowest", "absent": "skip" }
        """)), Sets);

    [Fact]
    public void A_set_is_chosen_by_a_role_that_is_present()
    {
        var record = Make.Record().Part("h", "hinge").About("cell", "t.part", 40).About("screen", "t.part", 80).About("h", "t.part", 60);
        Assert.Equal((Interval)50, record.Score(Choosing("""{ "present": "hinge" }""")).Total); // (40 + 60) / 2
    }

    [Fact]
    public void The_next_set_is_taken_when_the_role_is_absent()
    {
        var record = Make.Record().Absent("hinge").About("cell", "t.part", 40).About("screen", "t.part", 80);
        Assert.Equal((Interval)50, record.Score(Choosing("""{ "present": "hinge" }""")).Total); // (3 x 40 + 80) / 4
    }

    [Fact]
    public void An_undecidable_choice_gives_the_hull_of_both()
    {
        var score = Make.Record().About("cell", "t.part", 40).About("screen", "t.part", 80).Score(Choosing("""{ "present": "hinge" }"""));
        Assert.Equal(new Interval(20, 70), score.Total); // fold: (40 + [0, 100]) / 2; main: 50
        Assert.Null(score.At("root/p/main/battery/cell").Contribution);
        Assert.Equal((Interval)50, score.At("root/p/main").Value);
    }

    [Fact]
    public void A_set_is_chosen_by_whether_the_device_folds()
    {
        var record = Make.Record().Device(device => device with { Foldable = true }).Part("h", "hinge").About("cell", "t.part", 40).About("h", "t.part", 80);
        Assert.Equal((Interval)60, record.Score(Choosing("""{ "foldable": true }""")).Total);
    }
}
