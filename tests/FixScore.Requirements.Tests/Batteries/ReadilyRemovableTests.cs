namespace FixScore.Requirements.Tests.Batteries;

/// <summary>
/// Regulation (EU) 2023/1542, Art. 11(1) (read): the end user can take the whole battery out with commercially available tools, without specialised
/// tools unless they come free with the product, proprietary tools, heat or solvents.
/// </summary>
public sealed class ReadilyRemovableTests
{
    const string Rule = "readily-removable", Article = "Art. 11(1)";

    static void Says(RecordBuilder builder, FindingStatus status, string code) => builder.Says(Rule, Article, status, code);

    static Tool WithProduct(Tool tool) => tool with { SuppliedWith = [Tool.Product] };

    [Theory]
    [InlineData(ToolClass.Basic, false, FindingStatus.Met, "way-allowed")]
    [InlineData(ToolClass.Commercial, false, FindingStatus.Met, "way-allowed")]
    [InlineData(ToolClass.Specialised, false, FindingStatus.NotMet, "tool-not-allowed")]
    [InlineData(ToolClass.Specialised, true, FindingStatus.Met, "way-allowed")]
    [InlineData(ToolClass.Proprietary, false, FindingStatus.NotMet, "tool-not-allowed")]
    [InlineData(ToolClass.Proprietary, true, FindingStatus.NotMet, "tool-not-allowed")]
    public void Tools_are_on_sale_or_special_ones_come_with_the_product(ToolClass tool, bool supplied, FindingStatus status, string code) =>
        Says(Powered.Opened(tool, supplied ? WithProduct : null), status, code);

    [Fact]
    public void A_special_tool_that_comes_with_the_spare_only_is_not_enough() =>
        Says(Powered.Opened(ToolClass.Specialised, tool => tool with { SuppliedWith = ["battery"] }), FindingStatus.NotMet, "tool-not-allowed");

    [Theory]
    [InlineData(OperationAction.Heat)]
    [InlineData(OperationAction.Desolder)]
    public void Heat_is_not_allowed(OperationAction action) =>
        Says(Powered.Opened(ToolClass.Basic, configure: operation => operation with { Action = action }), FindingStatus.NotMet, "heat-not-allowed");

    [Fact]
    public void A_tool_that_heats_is_heat() => Says(Powered.Opened(ToolClass.Basic, tool => tool with { HeatC = 80 }), FindingStatus.NotMet, "heat-not-allowed");

    [Fact]
    public void Solvent_is_not_allowed()
    {
        Says(Powered.Opened(ToolClass.Basic, configure: operation => operation with { Action = OperationAction.ApplySolvent }), FindingStatus.NotMet, "solvent-not-allowed");
        Says(Powered.Opened(ToolClass.Basic, tool => tool with { Solvent = "isopropyl alcohol" }), FindingStatus.NotMet, "solvent-not-allowed");
        Says(Powered.Opened(ToolClass.Basic, configure: operation => operation with { Consumes = ["bottle"] })
            .Consumable("bottle", consumable => consumable with { Kind = "solvent" }), FindingStatus.NotMet, "solvent-not-allowed");
    }

    [Fact]
    public void A_battery_that_comes_out_harmed_fails() =>
        Says(Powered.Opened(ToolClass.Basic, configure: operation => operation with { Damages = ["battery"] }), FindingStatus.NotMet, "battery-harmed-not-allowed");

    [Fact]
    public void A_device_that_comes_out_harmed_fails() =>
        Says(Powered.Opened(ToolClass.Basic, configure: operation => operation with { Damages = ["frame"] }), FindingStatus.NotMet, "no-way-undamaged");

    [Fact]
    public void A_battery_that_is_one_with_the_board_fails() => Says(
        Powered.Device.Joint("solder", ["battery", "mainboard"], JointKind.Solder, joint => joint with { Integral = true }), FindingStatus.NotMet, "replaced-together");

    [Fact]
    public void Tools_that_were_not_recorded_leave_it_open() =>
        Says(Powered.Opened(ToolClass.Basic, configure: operation => operation with { Tools = default }), FindingStatus.Unknown, "heat-unknown");

    [Fact]
    public void A_tool_of_unknown_class_leaves_it_open() => Says(Powered.Opened(default), FindingStatus.Unknown, "tool-unknown");

    [Fact]
    public void One_set_of_tools_has_to_be_free_of_all_of_it()
    {
        RecordBuilder Either(ToolClass other) => Powered.Opened(ToolClass.Basic, tool => tool with { HeatC = 80 }, operation => operation with { OrTools = [["key"]] }).Tool("key", other);
        Says(Either(ToolClass.Basic), FindingStatus.Met, "way-allowed");
        Says(Either(ToolClass.Proprietary), FindingStatus.NotMet, "tools-together-not-allowed");
    }

    [Fact]
    public void Another_way_without_heat_is_enough() => Says(
        Powered.Opened(ToolClass.Basic, tool => tool with { HeatC = 80 }).Part("cover").Screw("cover-screws", ["cover", "frame"], "cross-h", 1.6m, 3)
            .Operation("open", OperationAction.Unscrew, EntryList.Of<string>(), ["cover-screws"], ["cover"])
            .Operation("reach-in", OperationAction.Pull, EntryList.Of<string>(), ["screws"], ["battery"], [new Condition.Removed("cover")]),
        FindingStatus.Met, "way-allowed");

    [Theory]
    [InlineData("smartphone", true)]
    [InlineData("slate-tablet", true)]
    [InlineData("laptop", false)]
    public void For_phones_and_tablets_the_other_law_is_named(string kind, bool named) => Assert.Equal(
        named,
        Powered.Opened(ToolClass.Basic).Device(device => device with { Kind = kind }).Find(Rule).Why.Text
            .EndsWith("Regulation (EU) 2023/1670 has a battery rule of its own for this kind of device; which of the two goes first is a legal question.", StringComparison.Ordinal));

    [Fact]
    public void Operations_that_break_the_rule_are_named()
    {
        var why = Powered.Opened(ToolClass.Proprietary).Find(Rule).Why;
        Assert.Equal("No way to battery is within the rule; on the shortest: free (unscrew, driver: proprietary).", why.Text);
        Assert.Equal(["/parts/2", "/operations/0"], why.Pointers.Select(pointer => pointer.Text));
    }
}
