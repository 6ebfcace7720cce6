namespace FixScore.Laws.Tests.Europe;

/// <summary>Regulation (EU) 2023/1669, Annex IV point 5: which parts count and how much.</summary>
public sealed class PartSetsTests
{
    [Theory] // Annex IV point 5, weights without a hinge and with one
    [InlineData("battery", "0.30", "0.25")]
    [InlineData("display-assembly", "0.30", "0.25")]
    [InlineData("back-cover", "0.10", "0.09")]
    [InlineData("front-camera", "0.05", "0.04")]
    [InlineData("rear-camera", "0.05", "0.04")]
    [InlineData("charging-port", "0.05", "0.04")]
    [InlineData("button", "0.05", "0.04")]
    [InlineData("microphone", "0.05", "0.04")]
    [InlineData("speaker", "0.05", "0.04")]
    [InlineData("hinge", null, "0.17")]
    public void Parts_weigh_what_the_law_says(string role, string? rigid, string folding)
    {
        var (plain, fold) = (Devices.Whole().Score(), Folding().Score());
        foreach (var score in (string[])["sdd", "sf", "st"])
        {
            Assert.Equal(rigid, plain.Weight($"{score}/{role}"));
            Assert.Equal(folding, fold.Weight($"{score}/{role}"));
        }
    }

    [Theory] // Annex IV point 5, formula of R
    [InlineData("sdd", "0.25")]
    [InlineData("sf", "0.15")]
    [InlineData("st", "0.15")]
    [InlineData("ssp", "0.15")]
    [InlineData("ssu", "0.15")]
    [InlineData("sri", "0.15")]
    public void Scores_weigh_what_the_law_says(string score, string weight) =>
        Assert.Equal(weight, Devices.Whole().Score().Weight(score));

    [Fact] // Annex IV point 5: the trigger is a hinge for depth, a foldable device for fasteners and tools
    public void A_hinge_in_a_device_that_does_not_fold_counts_for_depth_only()
    {
        var score = Devices.Whole().Hinged().Score();
        Assert.Equal(("0.17", null, null), (score.Weight("sdd/hinge"), score.Weight("sf/hinge"), score.Weight("st/hinge")));
    }

    [Fact] // Annex IV point 5: the same triggers, and a part that the product lacks has the top level
    public void A_foldable_device_without_a_hinge_has_its_top_level_for_fasteners_and_tools_only()
    {
        var score = Devices.Whole().Device(device => device with { Foldable = true }).Score();
        Assert.Equal((null, "0.17", "0.17"), (score.Weight("sdd/hinge"), score.Weight("sf/hinge"), score.Weight("st/hinge")));
        Assert.Equal(((Interval)5, (Interval)5), (score.At("sf/hinge").Value, score.At("st/hinge").Value));
    }

    [Fact] // Annex IV point 5: of several instances the lowest score
    public void Of_two_speakers_the_worse_counts()
    {
        var score = new RecordBuilder().Part("mainboard").Absent("hinge").Tool("driver", ToolClass.Basic).Brackets(2)
            .Held("speaker", 0, id: "upper").Held("speaker", 2, Reuse.Removable, ["driver"], id: "lower")
            .With(record => record with { Spares = [] }).Score();
        Assert.Equal(((Interval)4, (Interval)1, (Interval)4), (score.At("sdd/speaker").Value, score.At("sf/speaker").Value, score.At("st/speaker").Value));
    }

    [Theory] // Annex IV point 5: a part that the product lacks has the top level
    [InlineData("sdd/microphone")]
    [InlineData("sf/microphone")]
    [InlineData("st/microphone")]
    public void A_part_that_the_device_lacks_has_the_top_level(string path) =>
        Assert.Equal((Interval)5, new RecordBuilder().Absent("microphone", "hinge").Score().At(path).Value);

    [Fact] // no source: unknown is never zero
    public void A_part_that_was_not_recorded_is_the_whole_scale() =>
        Assert.Equal(new Interval(1, 5), new RecordBuilder().Absent("hinge").Score().At("sdd/microphone").Value);

    [Fact] // no source: where nobody looked for a hinge, the score spans both sets. Only the battery is deep: 5 - 0.30 x 4 = 3.80 or 5 - 0.25 x 4 = 4.00, less up to 0.17 x 4 for the hinge
    public void Where_a_hinge_is_unknown_both_sets_count() => Assert.Equal(
        new Interval(3.32m, 4), DeepBattery().Score().At("sdd").Value);

    static RecordBuilder DeepBattery() => new RecordBuilder().Part("mainboard").Brackets(15).Held("battery", 15).Absent([.. Devices.Priority.Skip(1)]);

    static RecordBuilder Folding() => Devices.Whole().Hinged().Device(device => device with { Foldable = true });
}
