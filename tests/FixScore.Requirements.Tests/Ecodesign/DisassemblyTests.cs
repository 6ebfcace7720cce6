namespace FixScore.Requirements.Tests.Ecodesign;

/// <summary>Annex II B/D 1.1(5), consolidated text of 20 June 2025 (read): fasteners, tools, environment and skill along the whole way to a part.</summary>
public sealed class DisassemblyTests
{
    const string Article = "Annex II B 1.1(5)";

    public static TheoryData<string, Reuse, ToolClass, WorkEnvironment, Skill, string> ByProfessionals => new()
    {
        { "display-assembly", Reuse.Removable, ToolClass.Specialised, WorkEnvironment.Workshop, Skill.Generalist, "way-allowed" },
        { "speaker", Reuse.Reusable, ToolClass.Commercial, WorkEnvironment.Use, Skill.Layman, "way-allowed" },
        { "speaker", Reuse.Neither, ToolClass.Basic, WorkEnvironment.Use, Skill.Layman, "fastener-not-allowed" },
        { "speaker", Reuse.Reusable, ToolClass.Proprietary, WorkEnvironment.Use, Skill.Layman, "tool-not-allowed" },
        { "speaker", Reuse.Reusable, ToolClass.Basic, WorkEnvironment.Production, Skill.Layman, "environment-not-allowed" },
        { "speaker", Reuse.Reusable, ToolClass.Basic, WorkEnvironment.Use, Skill.Expert, "skill-not-allowed" },
    };

    public static TheoryData<string, Reuse, ToolClass, WorkEnvironment, Skill, string> ByEndUsers => new()
    {
        { "sim-tray", Reuse.Removable, ToolClass.Basic, WorkEnvironment.Use, Skill.Layman, "way-allowed" },
        { "sim-tray", Reuse.Reusable, ToolClass.Commercial, WorkEnvironment.Use, Skill.Layman, "tool-not-allowed" },
        { "sim-tray", Reuse.Reusable, ToolClass.Basic, WorkEnvironment.Workshop, Skill.Layman, "environment-not-allowed" },
        { "sim-tray", Reuse.Reusable, ToolClass.Basic, WorkEnvironment.Use, Skill.Generalist, "skill-not-allowed" },
    };

    [Theory]
    [MemberData(nameof(ByProfessionals))]
    [MemberData(nameof(ByEndUsers))]
    public void Each_list_of_parts_has_its_limits(string part, Reuse reuse, ToolClass tool, WorkEnvironment environment, Skill skill, string code) =>
        Device.Phone.Held(part, reuse, tool, environment, skill)
            .Says($"disassembly.{part}", Article, code == "way-allowed" ? FindingStatus.Met : FindingStatus.NotMet, code);

    [Fact]
    public void What_was_not_observed_leaves_it_open()
    {
        Device.Phone.Held("speaker", default, ToolClass.Basic, WorkEnvironment.Use, Skill.Layman).Says("disassembly.speaker", Article, FindingStatus.Unknown, "fastener-unknown");
        Device.Phone.Held("speaker", Reuse.Reusable, default, WorkEnvironment.Use, Skill.Layman).Says("disassembly.speaker", Article, FindingStatus.Unknown, "tool-unknown");
        Device.Phone.Held("speaker", Reuse.Reusable, ToolClass.Basic, default, Skill.Layman).Says("disassembly.speaker", Article, FindingStatus.Unknown, "environment-unknown");
        Device.Phone.Held("speaker", Reuse.Reusable, ToolClass.Basic, WorkEnvironment.Use, default).Says("disassembly.speaker", Article, FindingStatus.Unknown, "skill-unknown");
        Device.Phone.Part("speaker").Says("disassembly.speaker", Article, FindingStatus.Unknown, "way-unknown");
    }

    [Fact]
    public void A_set_that_comes_with_the_product_is_allowed_for_end_users() => Device.Phone
        .Held("sim-tray", Reuse.Reusable, ToolClass.Commercial, WorkEnvironment.Use, Skill.Layman)
        .With(record => record with { Tools = [.. record.Tools.Select(tool => tool with { SuppliedWith = [Tool.Product] })] })
        .Says("disassembly.sim-tray", Article, FindingStatus.Met, "way-allowed");

    [Fact]
    public void A_part_that_only_damage_frees_fails() => Device.Phone.Held("speaker")
        .With(record => record with { Operations = [.. record.Operations.Select(operation => operation with { Damages = ["frame"] })] })
        .Says("disassembly.speaker", Article, FindingStatus.NotMet, "no-way-undamaged");

    static RecordBuilder TwoWays(OneOf<Skill> longer) => Device.Phone
        .Held("speaker", Reuse.Reusable, ToolClass.Proprietary, WorkEnvironment.Use, Skill.Layman).Held("cover")
        .Operation("reach-in", OperationAction.Pull, EntryList.Of<string>(), ["speaker-screws"], ["speaker"], [new Condition.Removed("cover")],
            configure: operation => operation with { Environment = WorkEnvironment.Use, Skill = longer });

    [Fact]
    public void A_longer_way_that_keeps_the_rule_is_enough()
    {
        var finding = TwoWays(Skill.Layman).Find("disassembly.speaker");
        Assert.Equal((FindingStatus.Met, "speaker comes out by free-cover, reach-in, all within the rule."), (finding.Status, finding.Why.Text));
    }

    [Fact]
    public void A_longer_way_that_may_keep_it_leaves_it_open() => TwoWays(default).Says("disassembly.speaker", Article, FindingStatus.Unknown, "skill-unknown");

    [Fact]
    public void When_no_way_keeps_it_the_shortest_is_told()
    {
        var finding = TwoWays(Skill.Expert).Find("disassembly.speaker");
        Assert.Equal(
            (FindingStatus.NotMet, "No way to speaker is within the rule; on the shortest: free-speaker (speaker-tool proprietary)."), (finding.Status, finding.Why.Text));
        Assert.Equal(["/parts/1", "/operations/0"], finding.Why.Pointers.Select(pointer => pointer.Text));
    }

    [Fact]
    public void A_part_that_is_not_there_is_not_taken_out() => Device.Phone.Absent("speaker").Says("disassembly.speaker", Article, FindingStatus.NotApplicable, "part-absent");

    static RecordBuilder Battery(Reuse reuse, ToolClass tool, WorkEnvironment environment = WorkEnvironment.Use, Skill skill = Skill.Layman) =>
        Device.Phone.Held("battery", reuse, tool, environment, skill);

    [Fact]
    public void Anyone_can_replace_a_battery_on_route_i()
    {
        Battery(Reuse.Reusable, ToolClass.Basic).Says("disassembly.battery", Article, FindingStatus.Met, "way-allowed");
        Battery(Reuse.Removable, ToolClass.Basic).Spare("battery", Audience.Public, spare => spare with { FastenersIncluded = new(true, []) })
            .Says("disassembly.battery", Article, FindingStatus.Met, "way-allowed");
    }

    [Fact]
    public void A_battery_that_lasts_may_need_a_workshop_on_route_ii()
    {
        Battery(Reuse.Removable, ToolClass.Commercial, WorkEnvironment.Workshop, Skill.Generalist).Lasting(83, 1000, "IP67")
            .Says("disassembly.battery", Article, FindingStatus.Met, "battery-route-ii");
        Battery(Reuse.Reusable, ToolClass.Commercial).Lasting(82, 1000, "IP67").Says("disassembly.battery", Article, FindingStatus.NotMet, "battery-no-route");
        Battery(Reuse.Reusable, ToolClass.Proprietary).Lasting(83, 1000, "IP67").Says("disassembly.battery", Article, FindingStatus.NotMet, "battery-no-route");
        Battery(Reuse.Reusable, ToolClass.Commercial).Says("disassembly.battery", Article, FindingStatus.Unknown, "battery-route-unknown");
    }

    [Fact]
    public void A_device_without_battery_has_none_to_replace() => Device.Phone.Absent("battery").Says("disassembly.battery", Article, FindingStatus.NotApplicable, "part-absent");
}
