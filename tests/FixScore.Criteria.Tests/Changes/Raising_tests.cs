using FixScore.Patching;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Changes;

/// <summary>What suggested changes are, and what they do to the criterion's own score on its default points, 0 to 100.</summary>
public sealed class Raising_tests
{
    static readonly Scale Percent = new(0, 100);

    // Levels of the options: stretch-release 90, tool 70; each may be off by 15.
    [Fact]
    public void A_bond_cut_with_a_tool_becomes_strips_that_are_pulled() =>
        Assert.Equal(("stretch-release-b", 55m, 75m), Only("adhesive-strength", Bonded(["knife"]), "battery"));

    [Fact]
    public void A_bond_that_lets_go_already_or_is_opened_along_with_screws_stays()
    {
        Assert.Empty(Suggested("adhesive-strength", Device().Bond("b", ["battery", "frame"], AdhesiveType.StretchRelease)
            .Operation("o", OperationAction.Pull, tools: [], undoes: ["b"], removes: ["battery"]).Build()));
        Assert.Empty(Suggested("adhesive-strength", Device().Tool("knife", ToolClass.Basic).Bond("b", ["battery", "frame"], AdhesiveType.Foam)
            .Screw("s", ["battery", "frame"], "cross-h", 1.6m, 3, 4).Operation("o", OperationAction.Unscrew, tools: ["knife"], undoes: ["b", "s"], removes: ["battery"]).Build()));
    }

    // Two types in equal numbers are an effective number of 2 (Hill 1973), 85 points; one type 100.
    [Fact]
    public void Screws_of_two_lengths_become_one() => Assert.Equal(("one-length", 85m, 100m), Only("fastener-diversity",
        Device().Screw("s", ["battery", "frame"], "cross-h", 1.6m, 3, 4).Screw("t", ["battery", "frame"], "cross-h", 1.6m, 4, 4).Build()));

    [Fact]
    public void A_part_that_trials_blame_is_untied() => Assert.Equal(("untie-battery", 0m, 100m), Only("software-pairing",
        Device().Swap("t", "unit-a", [("battery", "unit-b")], ("charging", SwapResult.Refused)).Build(), "battery"));

    [Fact]
    public void What_is_soldered_becomes_a_plug() => Assert.Equal(("plug-j", 10m, 100m), Only("part-modularity",
        Device().Joint("j", ["battery", "mainboard"], JointKind.Solder).With(record => record with { Spares = [] }).Build(), "battery"));

    // Regulation (EU) 2023/1669 Annex IV point 5: 7 years are the top, 6 the middle, 5 the bottom.
    [Fact]
    public void Updates_go_on_for_as_long_as_each_better_band_asks()
    {
        var record = Device().Support(support => support with { SecurityUpdateYears = 5, CorrectiveUpdateYears = 8, FunctionalityUpdateYears = 5 }).Build();
        Assert.Equal(["updates-for-6-years", "updates-for-7-years"], Suggested("software-support", record).Select(change => change.Id));
        Assert.Equal([50m, 100m], Suggested("software-support", record).Select(change => Low("software-support", Changed(record, change), "")));
    }

    [Fact]
    public void All_repair_information_is_given_to_repairers_or_to_everyone()
    {
        var record = Device().With(record => record with { Documentation = [new Document { Subject = DocumentSubject.Identification, Audience = Audience.Authorised }] }).Build();
        Assert.Equal(["publish-to-repairers", "publish-to-public"], Suggested("repair-information", record).Select(change => change.Id));
        Assert.Equal([50m, 100m], Suggested("repair-information", record).Select(change => Low("repair-information", Changed(record, change), "")));
    }

    // Bare hands from the start: one step, where a cover and two tools lay before.
    [Fact]
    public void A_part_is_reached_first()
    {
        var record = Device().Part("cover").Tool("driver", ToolClass.Basic).Tool("pick", ToolClass.Basic)
            .Screw("s", ["cover", "frame"], "cross-h", 1.6m, 3, 4).Joint("c", ["cover", "frame"], JointKind.SnapFit)
            .Joint("j", ["battery", "frame"], JointKind.Latch, joint => joint with { Under = ["cover"] })
            .Operation("u", OperationAction.Unscrew, tools: ["driver"], undoes: ["s"]).Operation("p", OperationAction.Unclip, tools: ["pick"], undoes: ["c"], removes: ["cover"])
            .Operation("o", OperationAction.Lift, tools: [], undoes: ["j"], removes: ["battery"]).Build();
        var change = Assert.Single(Suggested("disassembly-depth", record), each => each.Id == "reach-battery-first");
        Assert.Equal((75m, 100m), (Low("disassembly-depth", record, "battery"), Low("disassembly-depth", Changed(record, change), "battery")));
    }

    [Fact]
    public void Fasteners_come_with_the_spare_or_become_clips()
    {
        var record = Device().Bond("b", ["battery", "frame"], AdhesiveType.Foam, bond => bond with { Reuse = Reuse.Removable }).Spare("battery", Audience.Public)
            .Operation("o", OperationAction.Pull, tools: [], undoes: ["b"], removes: ["battery"]).Build();
        Assert.Equal(["fasteners-with-battery", "clip-b"], Suggested("fastener-reuse", record).Select(change => change.Id));
        Assert.Equal([50m, 100m], Suggested("fastener-reuse", record).Select(change => Low("fastener-reuse", Changed(record, change), "battery")));
    }

    [Fact]
    public void A_tool_that_is_hard_to_have_becomes_basic_or_comes_with_the_spare()
    {
        var record = Device().Tool("odd", ToolClass.Commercial).Joint("j", ["battery", "frame"], JointKind.Screw)
            .Operation("o", OperationAction.Unscrew, tools: ["odd"], undoes: ["j"], removes: ["battery"]).Build();
        Assert.Equal(["basic-odd", "supply-odd"], Suggested("tool-access", record).Select(change => change.Id));
        Assert.Equal([75m, 50m], Suggested("tool-access", record).Select(change => Low("tool-access", Changed(record, change), "battery")));
    }

    [Fact]
    public void Only_parts_of_the_roles_asked_for_are_advised_on() =>
        Assert.Empty(Suggested("adhesive-strength", Bonded(["knife"]), "speaker"));

    static RecordBuilder Device() => new RecordBuilder().Part("frame").Part("mainboard").Part("battery");

    static TeardownRecord Bonded(string[] tools) => Device().Tool("knife", ToolClass.Basic).Bond("b", ["battery", "frame"], AdhesiveType.Foam)
        .Operation("o", OperationAction.Pull, tools: EntryList.Of<string>(tools), undoes: ["b"], removes: ["battery"]).Build();

    static (string Id, decimal Before, decimal After) Only(string criterion, TeardownRecord record, string part = "")
    {
        var change = Assert.Single(Suggested(criterion, record));
        return (change.Id, Low(criterion, record, part), Low(criterion, Changed(record, change), part));
    }

    static TeardownRecord Changed(TeardownRecord record, DesignChange change) => RecordPatch.Apply(record, change.JsonPatch).OrThrow().Record;

    static DesignChange[] Suggested(string criterion, TeardownRecord record, params string[] roles) =>
        [.. ((IDesignAdvisor)Find(criterion)).Suggest(new(new RecordCase(record), Percent, OptionValues.DefaultsOf(Find(criterion).Info, Percent)) { Roles = [.. roles] })];

    static decimal Low(string criterion, TeardownRecord record, string part) => Find(criterion) switch
    {
        IPartCriterion ofPart => ofPart.Judge(Contexts.For(ofPart, new RecordCase(record), part)).Score.Low,
        var ofDevice => ((IDeviceCriterion)ofDevice).Judge(Contexts.For((IDeviceCriterion)ofDevice, new RecordCase(record))).Score.Low,
    };

    static ICriterion Find(string id) => Conformance_tests.Installed.Criteria.First(each => each.Item.Info.Id == id).Item;
}
