using FixScore.Criteria.Safety;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Safety;

/// <summary>The words are those of the record format; the default points are own judgement, no source.</summary>
public sealed class Hazard_exposure_tests
{
    static readonly HazardExposureCriterion Criterion = new();
    static readonly (Option, object) Counted = (HazardExposureOptions.Combine, Combine.Count);
    static readonly (Option, object) TakenAsNone = (HazardExposureOptions.HazardsUnknown, WhenHazardsUnknown.None);

    [Fact]
    public void A_way_without_hazards_has_the_level_none()
    {
        var outcome = On(Device([]));
        Assert.Equal(100, outcome.Score);
        Assert.Equal<Interval?>(100, outcome.Because("no-hazards").Points);
        Assert.Empty(outcome.Missing);
    }

    [Theory]
    [InlineData(Hazard.MainsCapacitor, 0)]
    [InlineData(Hazard.LithiumCell, 30)]
    [InlineData(Hazard.FlammableSolvent, 30)]
    [InlineData(Hazard.Laser, 40)]
    [InlineData(Hazard.Fumes, 50)]
    [InlineData(Hazard.HotSurface, 60)]
    [InlineData(Hazard.Glass, 60)]
    [InlineData(Hazard.SpringTension, 70)]
    [InlineData(Hazard.SharpEdge, 80)]
    [InlineData(Hazard.StrongMagnet, 90)]
    [InlineData(Hazard.StaticSensitive, 95)]
    public void A_hazard_of_an_operation_has_its_level(Hazard hazard, int points) => Assert.Equal(points, On(Device([hazard])).Score);

    [Fact]
    public void The_worst_hazard_counts_and_each_has_a_reason()
    {
        var outcome = On(Device([Hazard.StaticSensitive, Hazard.Glass]));
        Assert.Equal(60, outcome.Score);
        Assert.Equal(["static-sensitive", "glass"], outcome.Reasons.Where(reason => reason.Code == "hazard").Select(reason => reason.Values[1].Value.Text));
        Assert.Equal("On the way to part battery there is glass: pull.", outcome.Reasons[1].Text);
    }

    [Fact]
    public void A_hot_tool_and_the_action_heat_bring_a_hot_surface()
    {
        Assert.Equal(60, On(Device([], tools: ["gun"])).Score);
        Assert.Equal(60, On(Device([], action: OperationAction.Heat)).Score);
        Assert.Equal(100, On(Device([], tools: ["hook"])).Score);
    }

    [Fact]
    public void A_solvent_burns_or_fumes()
    {
        Assert.Equal(new Interval(30, 50), On(Device([], tools: ["dropper"])).Score);
        Assert.Equal(new Interval(30, 50), On(Device([], action: OperationAction.ApplySolvent)).Score);
        Assert.Equal(30, On(Device([Hazard.FlammableSolvent], tools: ["dropper"])).Score);
    }

    [Fact]
    public void A_hazard_of_a_part_taken_out_counts() => Assert.Equal(30, On(Device([], cell: true)).Score);

    [Fact]
    public void A_lithium_cell_in_hot_work_is_a_hazard_of_its_own()
    {
        Assert.Equal(0, On(Device([], tools: ["gun"], cell: true)).Score);
        Assert.Equal("pull", On(Device([Hazard.LithiumCell, Hazard.HotSurface])).Reasons.Single(reason => reason.Text.Contains("heated-cell", StringComparison.Ordinal)).Values[2].Value.Text);
    }

    [Fact]
    public void So_is_one_that_is_taken_out_directly_after_heating()
    {
        var after = Device([], cell: true, configure: pull => pull with { DirectlyAfter = "warm" })
            .Operation("warm", OperationAction.Heat, ["gun"], configure: warm => warm with { Hazards = [] });
        Assert.Equal(0, On(after).Score);
        var earlier = Device([], cell: true, configure: pull => pull with { After = [new Condition.Done("warm")] })
            .Operation("warm", OperationAction.Heat, ["gun"], configure: warm => warm with { Hazards = [] });
        Assert.Equal(30, On(earlier).Score);
    }

    [Fact]
    public void Hazards_that_were_not_recorded_may_be_any_or_are_taken_as_none()
    {
        var outcome = On(Device([], configure: pull => pull with { Hazards = default }));
        Assert.Equal(new Interval(0, 100), outcome.Score);
        Assert.Equal(("/operations/0", "hazards"), (outcome.Missing.Single().At.Text, outcome.Missing.Single().What));
        var none = On(Device([], configure: pull => pull with { Hazards = default }), TakenAsNone);
        Assert.Equal(100, none.Score);
        Assert.EndsWith("taken as none.", none.Because("hazards-not-recorded").Text, StringComparison.Ordinal);
        Assert.Empty(none.Missing);
    }

    [Fact]
    public void Unknown_hazards_beside_a_known_one_never_better_it() =>
        Assert.Equal(new Interval(0, 60), On(Device([Hazard.Glass]).With(record => record with { Parts = [record.Parts[0], record.Parts[1] with { Hazards = default }] })).Score);

    [Fact]
    public void Unknown_tools_leave_only_the_part_itself_certain()
    {
        var outcome = On(Device([Hazard.Glass], cell: true, configure: pull => pull with { Tools = default }));
        Assert.Equal(new Interval(0, 30), outcome.Score);
        Assert.Equal("tools", outcome.Missing.Single().What);
        Assert.NotEmpty(outcome.Because("route-open").Pointers);
    }

    [Fact]
    public void Different_hazards_can_be_counted()
    {
        Assert.Equal(100, On(Device([]), Counted).Score);
        Assert.Equal(60, On(Device([Hazard.Glass, Hazard.Laser, Hazard.Glass]), Counted).Score);
        Assert.Equal(new Interval(60, 80), On(Device([], tools: ["dropper"]), Counted).Score);
        Assert.Equal(new Interval(0, 80), On(Device([Hazard.Glass]).With(record => record with { Parts = [record.Parts[0], record.Parts[1] with { Hazards = default }] }), Counted).Score);
        // A heated cell is a cell and a hot surface: two.
        Assert.Equal(60, On(Device([], tools: ["gun"], cell: true), Counted).Score);
    }

    [Fact]
    public void What_only_damage_frees_has_the_lowest() =>
        Assert.Equal<Interval?>(0, On(Device([], configure: pull => pull with { Damages = ["frame"] })).Because("unreachable").Points);

    [Fact]
    public void A_part_whose_route_is_unknown_is_unknown()
    {
        Assert.Equal("/joints/0", On(Device([], configure: pull => pull with { Undoes = [] })).Missing.Single().At.Text);
        Assert.Equal(OutcomeKind.Unknown, On(Device([]).With(record => record with { Operations = default })).Kind);
    }

    static RecordBuilder Device(
        EntryList<Hazard> hazards, EntryList<string>? tools = null, OperationAction action = OperationAction.Pull, bool cell = false,
        Func<Operation, Operation>? configure = null) => new RecordBuilder()
        .Part("frame", configure: part => part with { Hazards = [] })
        .Part("battery", configure: part => part with { Hazards = cell ? [Hazard.LithiumCell] : [] })
        .Tool("hook", ToolClass.Basic).Tool("gun", ToolClass.Basic, tool => tool with { HeatC = 80 }).Tool("dropper", ToolClass.Basic, tool => tool with { Solvent = "isopropanol" })
        .Bond("glue", ["battery", "frame"])
        .Operation("pull", action, tools ?? [], ["glue"], ["battery"], configure: pull => (configure ?? (each => each))(pull with { Hazards = hazards }));

    static Outcome On(RecordBuilder builder, params ReadOnlySpan<(Option, object)> options)
    {
        var record = builder.Build();
        var outcome = Criterion.On(record, "battery", options);
        outcome.PointsInto(record);
        return outcome;
    }
}
