using System.Globalization;

namespace FixScore.Laws.Tests.Europe;

/// <summary>Regulation (EU) 2023/1669, Annex IV point 5: spare parts, updates and information of a device.</summary>
public sealed class DeviceScoresTests
{
    const string Ladder = "display-assembly battery back-cover front-camera rear-camera charging-port button microphone speaker";

    [Theory] // Annex IV point 5, spare parts: how many of the roles above are for everyone. None: no level, the lowest by our reading
    [InlineData(9, 5)]
    [InlineData(8, 4)]
    [InlineData(5, 4)]
    [InlineData(4, 3)]
    [InlineData(3, 3)]
    [InlineData(2, 2)]
    [InlineData(1, 1)]
    [InlineData(0, 1)]
    public void Spare_parts_follow_the_table(int everyone, int points) =>
        Assert.Equal((Interval)points, Devices.Whole().Spares(false, [.. Ladder.Split(' ').Take(everyone)]).Score().At("ssp").Value);

    [Theory] // Annex IV point 5, spare parts: all priority parts, the hinge of a foldable device among them by our reading
    [InlineData(Audience.Public, 5)]
    [InlineData(Audience.Repairers, 4)]
    public void The_hinge_of_a_foldable_device_is_on_the_ladder(Audience audience, int points) =>
        Assert.Equal((Interval)points, Devices.Whole().Hinged().Device(device => device with { Foldable = true })
            .Spares(false, Devices.Priority).Spare("hinge", audience).Score().At("ssp").Value);

    [Theory] // Annex IV point 5, software updates: 7, 6, 5 years. Parts of years and less than 5: our readings
    [InlineData("10", 5)]
    [InlineData("7", 5)]
    [InlineData("6.9", 3)]
    [InlineData("6", 3)]
    [InlineData("5", 1)]
    [InlineData("4", 1)]
    public void Updates_follow_the_table(string years, int points) =>
        Assert.Equal((Interval)points, Devices.Whole().Years(decimal.Parse(years, CultureInfo.InvariantCulture)).Score().At("ssu").Value);

    [Fact] // Annex IV point 5, software updates: security, corrective and functionality
    public void The_shortest_kind_of_update_counts() =>
        Assert.Equal((Interval)1, Devices.Whole().Years(7).Support(support => support with { FunctionalityUpdateYears = 5 }).Score().At("ssu").Value);

    [Fact] // Annex IV point 5, software updates: counted from the end of placement on the market
    public void Years_from_another_event_leave_updates_open() =>
        Assert.Equal(new Interval(1, 5), Devices.Whole().Years(7, CountedFrom.Release).Score().At("ssu").Value);

    [Theory] // Annex IV point 5, repair information; board diagrams are for repairers in all. Other fees: no level, the lowest by our reading
    [InlineData(Audience.Public, DocumentCost.Free, 5)]
    [InlineData(Audience.Repairers, DocumentCost.Free, 3)]
    [InlineData(Audience.Repairers, DocumentCost.ReasonableFee, 1)]
    [InlineData(Audience.Public, DocumentCost.ReasonableFee, 1)]
    [InlineData(Audience.Repairers, DocumentCost.Fee, 1)]
    [InlineData(Audience.Authorised, DocumentCost.Free, 1)]
    public void Information_follows_the_table(Audience audience, DocumentCost cost, int points) =>
        Assert.Equal((Interval)points, Devices.Whole().Documents(audience, cost).Score().At("sri").Value);
}
