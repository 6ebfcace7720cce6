namespace FixScore.Laws.Tests.Europe;

/// <summary>Regulation (EU) 2023/1669, Annex IV point 5: depth, fasteners and tools of a part.</summary>
public sealed class PartScoresTests
{
    [Theory] // Annex IV point 5, disassembly depth: at most 2, 3 to 5, 6 to 10, 11 to 15, more than 15 steps
    [InlineData(1, 5)]
    [InlineData(2, 5)]
    [InlineData(3, 4)]
    [InlineData(5, 4)]
    [InlineData(6, 3)]
    [InlineData(10, 3)]
    [InlineData(11, 2)]
    [InlineData(15, 2)]
    [InlineData(16, 1)]
    public void Depth_follows_the_table(int steps, int points) =>
        Assert.Equal((Interval)points, Devices.Whole(steps).Score().At("sdd/battery").Value);

    [Theory] // Annex IV point 5: remote notification and remote authorisation add five steps each; here to two steps
    [InlineData(SerialAction.None, SerialAction.None, 5)]
    [InlineData(SerialAction.Local, SerialAction.Local, 5)]
    [InlineData(SerialAction.Remote, SerialAction.None, 3)]
    [InlineData(SerialAction.None, SerialAction.Remote, 3)]
    [InlineData(SerialAction.Remote, SerialAction.Remote, 2)]
    public void Each_remote_demand_adds_five_steps(SerialAction notify, SerialAction authorise, int points) =>
        Assert.Equal((Interval)points, Devices.Whole(2).BatteryDemands(notify, authorise).Score().At("sdd/battery").Value);

    [Theory] // Annex IV point 5, fasteners; Annex I (16) to (19). Neither: no level, the lowest by our reading
    [InlineData(Reuse.Reusable, false, 5)]
    [InlineData(Reuse.Removable, true, 3)]
    [InlineData(Reuse.Removable, false, 1)]
    [InlineData(Reuse.Neither, false, 1)]
    public void Fasteners_follow_the_table(Reuse reuse, bool supplied, int points) =>
        Assert.Equal((Interval)points, Devices.Whole(reuse: reuse).Spares(supplied).Score().At("sf/battery").Value);

    [Theory] // Annex IV point 5, tools; Annex I (42) to (44). Proprietary: no level, the lowest by our reading
    [InlineData(null, null, 5)]
    [InlineData(ToolClass.Basic, null, 4)]
    [InlineData(ToolClass.Commercial, "battery", 3)]
    [InlineData(ToolClass.Commercial, "product", 2)]
    [InlineData(ToolClass.Commercial, null, 1)]
    [InlineData(ToolClass.Specialised, null, 1)]
    [InlineData(ToolClass.Proprietary, null, 1)]
    public void Tools_follow_the_table(ToolClass? tool, string? suppliedWith, int points)
    {
        var device = Devices.Whole(tool: tool);
        if (suppliedWith is not null)
            device.With(record => record with { Tools = EntryList.Of(record.Tools[0] with { SuppliedWith = [suppliedWith] }) });
        Assert.Equal((Interval)points, device.Score().At("st/battery").Value);
    }

    [Fact] // Annex IV point 5: the worst level counts
    public void Of_mixed_fasteners_and_tools_the_worst_counts()
    {
        var score = new RecordBuilder().Part("mainboard").Absent("hinge").Tool("driver", ToolClass.Basic).Tool("heater", ToolClass.Commercial)
            .Held("battery", 0, Reuse.Removable, ["driver", "heater"], clipped: true).With(record => record with { Spares = [] }).Score();
        Assert.Equal(((Interval)1, (Interval)1), (score.At("sf/battery").Value, score.At("st/battery").Value));
    }

    [Fact] // Annex IV point 5: fasteners and tools are judged from the previous priority part on, depth from the closed product
    public void Fasteners_and_tools_are_incremental_and_depth_is_not()
    {
        var score = UnderTheDisplay().Score();
        Assert.Equal(((Interval)1, (Interval)1), (score.At("sf/display-assembly").Value, score.At("st/display-assembly").Value));
        Assert.Equal(((Interval)5, (Interval)4), (score.At("sf/battery").Value, score.At("st/battery").Value));
        Assert.Equal(((Interval)5, (Interval)4), (score.At("sdd/display-assembly").Value, score.At("sdd/battery").Value));
    }

    // A bracket and the display are two steps; the battery is the third.
    static RecordBuilder UnderTheDisplay() => new RecordBuilder().Part("mainboard").Absent("hinge").Tool("driver", ToolClass.Basic).Tool("heater", ToolClass.Commercial)
        .Brackets(1).Held("display-assembly", 1, Reuse.Removable, ["heater"]).Held("battery", 0, Reuse.Reusable, ["driver"])
        .With(record => record with
        {
            Spares = [],
            Operations = EntryList.Of(record.Operations[0], record.Operations[1], record.Operations[2] with { After = [new Condition.Removed("display-assembly")] }),
        });
}
