using System.Globalization;

namespace FixScore.Laws.Tests.Europe;

/// <summary>Regulation (EU) 2023/1669: the index of Annex IV point 5 and the classes of Annex II Table 4.</summary>
public sealed class IndexTests
{
    [Fact] // Annex IV point 5, computed by hand: all levels 5
    public void The_best_device_has_5_and_class_A() => AssertIndex("5.00", "A",
        Devices.Whole().Spares(true, Devices.Priority).Years(7).Documents(Audience.Public));

    [Fact] // Annex IV point 5, computed by hand: all levels 1
    public void The_worst_device_has_1_and_class_E() => AssertIndex("1.00", "E",
        Devices.Whole(16, Reuse.Removable, ToolClass.Commercial).Spares(false, "display-assembly").Years(5).Documents(Audience.Repairers, DocumentCost.ReasonableFee));

    [Fact] // 0.25 x 3 + 0.15 x (3 + 4 + 3 + 3 + 3) = 3.15
    public void A_middling_device_has_3_15_and_class_C() => AssertIndex("3.15", "C", Middling());

    [Fact] // 6 + 10 steps to the battery: 0.3 x 1 + 0.7 x 3 = 2.40; 0.25 x 2.40 + 0.15 x 16 = 3.00
    public void Remote_demands_for_the_battery_take_it_to_3_00()
    {
        var device = Middling().BatteryDemands(SerialAction.Remote, SerialAction.Remote);
        Assert.Equal((Interval)2.40m, device.Score().At("sdd").Value);
        AssertIndex("3.00", "C", device);
    }

    [Theory] // Annex II Table 4
    [InlineData("5.00", "A")]
    [InlineData("4.00", "A")]
    [InlineData("3.99", "B")]
    [InlineData("3.35", "B")]
    [InlineData("3.34", "C")]
    [InlineData("2.55", "C")]
    [InlineData("2.54", "D")]
    [InlineData("1.75", "D")]
    [InlineData("1.74", "E")]
    [InlineData("1.00", "E")]
    public void Classes_begin_where_the_table_says(string index, string label) => Assert.Equal(
        new(label, label), Devices.Whole().Score(Rules.EuropeAnswering(decimal.Parse(index, CultureInfo.InvariantCulture))).Class!);

    [Fact] // Article 2
    public void Other_kinds_of_device_are_refused() => Assert.Throws<ProfileMismatchException>(() =>
        new RecordBuilder().Device(device => device with { Kind = "laptop" }).Score());

    static RecordBuilder Middling() => Devices.Whole(6, Reuse.Removable, ToolClass.Basic)
        .Spares(true, "display-assembly", "battery", "back-cover").Years(6).Documents(Audience.Repairers);

    static void AssertIndex(string index, string label, RecordBuilder device)
    {
        var score = device.Score();
        Assert.Equal(((Interval)decimal.Parse(index, CultureInfo.InvariantCulture), new(label, label)), (score.Total, score.Class!));
    }
}
