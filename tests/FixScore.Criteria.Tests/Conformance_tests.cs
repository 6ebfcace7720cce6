using FixScore.Criteria.Adhesives;
using FixScore.Criteria.Cost;
using FixScore.Criteria.Disassembly;
using FixScore.Criteria.Documentation;
using FixScore.Criteria.Fasteners;
using FixScore.Criteria.Locks;
using FixScore.Criteria.Modularity;
using FixScore.Criteria.Pairing;
using FixScore.Criteria.Safety;
using FixScore.Criteria.Spares;
using FixScore.Criteria.Support;
using FixScore.Criteria.Time;
using FixScore.Testing;

namespace FixScore.Criteria.Tests;

/// <summary>The laws that every criterion keeps, checked by the kit that authors of criteria use.</summary>
public sealed class Conformance_tests
{
    internal static readonly Catalogue Installed =
        Catalogue.Of(
            new FastenersPlugin(), new AdhesivesPlugin(), new ModularityPlugin(), new PairingPlugin(), new DocumentationPlugin(),
            new SparesPlugin(), new SupportPlugin(), new DisassemblyPlugin(), new TimePlugin(), new CostPlugin(), new SafetyPlugin(), new LocksPlugin());

    public static TheoryData<string> Ids => [.. Installed.Criteria.Select(each => each.Item.Info.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void It_describes_itself_stays_on_the_scale_is_deterministic_and_only_widens_when_it_knows_less(string id)
    {
        Assert.True(Installed.TryGetCriterion(id, out var criterion));
        CriterionConformance.Check(criterion.Item, new ConformanceOptions { Generated = 40, Pairs = Pairs(id) }).ThrowIfAny();
    }

    [Fact]
    public void There_are_seventeen() => Assert.Equal(17, Installed.Criteria.Count());

    static System.Collections.Immutable.ImmutableArray<MonotonePair> Pairs(string id) => id switch
    {
        "fastener-diversity" => [new("one type of screw instead of two", Device().Screw("s", ["battery", "frame"], "cross-h", 1.6m, 3, 4).Screw("t", ["battery", "frame"], "slot", 1.6m, 3, 4).Build(),
            Device().Screw("s", ["battery", "frame"], "cross-h", 1.6m, 3, 8).Build())],
        "adhesive-strength" => [new("pulled by hand instead of cut with a tool", Opened(["knife"]), Opened([]))],
        "part-modularity" => [new("a plug instead of solder", Device().Joint("j", ["battery", "mainboard"], JointKind.Solder).Build(),
            Device().Plug("j", ["battery", "mainboard"], ConnectorType.BoardToBoard).Build())],
        "software-pairing" => [new("a notice instead of a refusal", Swapped(SwapResult.Refused), Swapped(SwapResult.Notice))],
        "spare-availability" => [new("public instead of for repairers", Sold(spare => spare with { Audience = Audience.Repairers }), Sold(spare => spare))],
        "spare-terms" => [new("seven years instead of three", Sold(spare => spare with { Years = 3 }), Sold(spare => spare with { Years = 7 }))],
        "spare-price-ratio" => [new("a tenth of the price instead of a fifth", Sold(spare => spare with { Price = Euro(80) }), Sold(spare => spare with { Price = Euro(40) }))],
        "software-support" => [new("seven years instead of five", Supported(5), Supported(7))],
        "disassembly-depth" => [new("a tool less to take up", Opened(["knife", "hook"]), Opened([]))],
        "fastener-reuse" => [new("a bond that stays whole instead of one that is lost", Opened([], Reuse.Removable), Opened([], Reuse.Reusable))],
        "tool-access" => [new("pulled by hand instead of cut with a tool", Opened(["knife"]), Opened([]))],
        "disassembly-time" => [new("a minute instead of ten", Worked(600), Worked(60))],
        "repair-cost-ratio" => [new("a spare at a tenth instead of two fifths", Worked(600, 160), Worked(600, 40))],
        "hazard-exposure" => [new("glass instead of a capacitor", Worked(60, hazard: Hazard.MainsCapacitor), Worked(60, hazard: Hazard.Glass))],
        "lock-freedom" => [new("back on relock instead of never", Unlocked(Recovery.Never), Unlocked(Recovery.OnRelock))],
        _ => [new("public instead of for repairers", Documented(Audience.Repairers), Documented(Audience.Public))],
    };

    static RecordBuilder Device() => new RecordBuilder().Part("frame").Part("mainboard").Part("battery");

    static TeardownRecord Opened(string[] tools, OneOf<Reuse> reuse = default) => Device().Tool("knife", ToolClass.Basic).Tool("hook", ToolClass.Basic)
        .Bond("b", ["battery", "frame"], AdhesiveType.Foam, bond => bond with { Reuse = reuse })
        .Operation("o", OperationAction.Pull, tools: EntryList.Of<string>(tools), undoes: ["b"], removes: ["battery"]).Build();

    static TeardownRecord Worked(int seconds, decimal price = 40, Hazard hazard = Hazard.SharpEdge) => Device()
        .Device(device => device with { Price = Euro(400) }).Spare("battery", Audience.Public, spare => spare with { Price = Euro(price) })
        .Bond("b", ["battery", "frame"], AdhesiveType.Foam)
        .Operation("o", OperationAction.Pull, [], ["b"], ["battery"], seconds: seconds, configure: pull => pull with
        {
            WaitSeconds = 0, ReassemblySeconds = seconds, Hazards = [hazard],
        })
        .With(record => record with { Parts = [.. record.Parts.Select(part => part with { Hazards = [] })] }).Build();

    static TeardownRecord Swapped(SwapResult result) => Device().Swap("t", "unit-a", [("battery", "unit-b")], ("charging", result)).Build();

    static TeardownRecord Unlocked(Recovery recovery) => Device().Lock("l", "unit-a", LockState.Locked, LockState.Unlocked, trial => trial with
    {
        Outcome = LockOutcome.Done, WaitDays = 0, WipesData = true, WarrantyNotice = false, Losses = [new() { Function = "payment", Recovers = recovery }],
    }).Build();

    static TeardownRecord Documented(Audience audience) => Device().With(record => record with
    {
        Documentation = [new Document { Subject = DocumentSubject.Identification, Audience = audience, Cost = DocumentCost.Free, Years = 7 }],
    }).Build();

    static TeardownRecord Sold(Func<Spare, Spare> configure) => Device().Part("display-assembly").Part("back-cover")
        .Device(device => device with { Price = Euro(400) })
        .Spare("display-assembly", Audience.Public).Spare("battery", Audience.Public, configure).Spare("back-cover", Audience.Repairers)
        .With(record => record with { Joints = [], Absent = ["front-camera", "rear-camera", "charging-port", "button", "microphone", "speaker"] }).Build();

    static Price Euro(decimal amount) => new(amount, "EUR", TaxIncluded: true);

    static TeardownRecord Supported(int years) => Device().Support(support => support with
    {
        SecurityUpdateYears = years, CorrectiveUpdateYears = years, FunctionalityUpdateYears = years,
    }).Build();
}
