using FixScore.Records;

namespace FixScore.Testing;

static class GluedSample
{
    public static TeardownRecord Build() => Supply(Trials(Work(Joints(Parts(new RecordBuilder("glued-tablet")))))).Build();

    static RecordBuilder Parts(RecordBuilder to) => to
        .Device(device => device with
        {
            Kind = "slate-tablet", ModelCode = "eu-1", Released = new(2025, 3, 1), IngressProtection = "IP68", Price = new(499, "EUR", true),
        })
        .With(record => record with
        {
            Assessment = record.Assessment with
            {
                Units = [.. record.Assessment.Units.Select(unit => unit with { ModelCode = "eu-1", Software = "3.2" })],
            },
        })
        .Absent("hinge", "button")
        .Part("frame").Part("mainboard").Part("port", "charging-port", on: "mainboard")
        .Part("battery", configure: battery => battery with
        {
            Specs = [new() { Name = "rated-capacity", Value = 8000, Unit = "mAh" }, new() { Name = "cycles-to-80-percent", Value = new(700, 900), Unit = "1" }],
            Hazards = [Hazard.LithiumCell],
        })
        .Part("display", "display-assembly", configure: display => display with
        {
            Serialised = new() { Notify = SerialAction.None, Authorise = SerialAction.Remote, AccessDays = 3, Audience = Audience.Authorised },
            PerUnit = [new() { Unit = "unit-a", Marking = "D-1", ModelCode = "d" }, new() { Unit = "unit-b", Marking = "D-2", ModelCode = "d" }],
        });

    static RecordBuilder Joints(RecordBuilder to) => to
        .Bond("display-glue", ["display", "frame"], AdhesiveType.Foam, joint => joint with
        {
            Reuse = Reuse.Removable, Hidden = true,
            Adhesive = joint.Adhesive! with { PeelNPer25Mm = new(8, 12), WidthMm = 2, AreaMm2 = 1500, SoftensAtC = 80 },
        })
        .Plug("display-plug", ["display", "mainboard"], ConnectorType.BoardToBoard, joint => joint with { Reuse = Reuse.Reusable })
        .Bond("battery-glue", ["battery", "frame"], AdhesiveType.StretchRelease, joint => joint with
        {
            Reuse = Reuse.Neither, Under = ["display"], Adhesive = joint.Adhesive! with { ShearMPa = 0.4m, AreaMm2 = 6000 },
        })
        .Plug("battery-plug", ["battery", "mainboard"], ConnectorType.SpringContact, joint => joint with { Reuse = Reuse.Reusable, Under = ["display"] })
        .Screw("board-screws", ["mainboard", "frame"], "hexalobular", 1.4m, 3, 5, joint => joint with { Reuse = Reuse.Reusable, Under = ["battery"] })
        .Joint("port-solder", ["port", "mainboard"], JointKind.Solder, joint => joint with { Integral = true });

    static RecordBuilder Work(RecordBuilder to) => to
        .Tool("warm-plate", ToolClass.Commercial, tool => tool with { HeatC = 80 })
        .Tool("pick", ToolClass.Basic).Tool("driver", ToolClass.Specialised)
        .Consumable("tape-set", consumable => consumable with { Kind = "adhesive-tape", Price = new(12, "EUR", true) })
        .Operation("warm-edge", OperationAction.Heat, ["warm-plate"], seconds: 120, configure: heat => heat with
        {
            WaitSeconds = 100, Hazards = [Hazard.HotSurface], Environment = WorkEnvironment.Workshop, Skill = Skill.Generalist,
        })
        .Operation("lift-display", OperationAction.CutAdhesive, ["pick"], ["display-glue", "display-plug"], ["display"], seconds: new(200, 400),
            configure: lift => lift with
            {
                DirectlyAfter = "warm-edge", Consumes = ["tape-set"], Hazards = [Hazard.Glass], Skill = new(Skill.Generalist, Skill.Expert),
                Outcomes = [new() { Unit = "unit-a", Result = OutcomeResult.Clean }],
            })
        .Operation("pull-battery", OperationAction.Pull, [], ["battery-glue", "battery-plug"], ["battery"], [new Condition.Removed("display")], 60,
            pull => pull with
            {
                Hazards = [Hazard.LithiumCell],
                Caution = "A bent, pierced or heated cell can catch fire: discharge it, use no sharp tool, follow local codes, or leave it to licensed practice.",
            })
        .Operation("unscrew-board", OperationAction.Unscrew, ["driver"], ["board-screws"], ["mainboard"], [new Condition.Away("battery")], 90);

    static RecordBuilder Trials(RecordBuilder to) => to
        .Swap("control", "unit-a", [], ("ambient-colour", SwapResult.Works))
        .Swap("swap-display", "unit-a", [("display", "unit-b")], ("touch", SwapResult.Works), ("ambient-colour", SwapResult.Warning))
        .Swap("swap-battery", "unit-a", [("battery", "unit-b")], ("charging", SwapResult.Works), ("health", SwapResult.Untested))
        .Lock("open-lock", "unit-b", LockState.Locked, LockState.Unlocked, trial => trial with
        {
            Outcome = LockOutcome.Done, WaitDays = 7, WipesData = true, Losses = [new() { Function = "payment", Recovers = Recovery.OnRelock }],
        });

    static RecordBuilder Supply(RecordBuilder to) => to
        .Document(DocumentSubject.Identification, Audience.Public, DocumentCost.Free, document => document with { Years = 5 })
        .Document(DocumentSubject.BoardSchematic, Audience.Nobody)
        .Document(DocumentSubject.DisassemblyInstructions, Audience.Authorised, DocumentCost.Fee)
        .Spare("display", new(Audience.Repairers, Audience.Authorised), spare => spare with
        {
            Years = new(5, 7), DeliveryDays = 10, Price = new(new Quantity(180, 220), "EUR"), OnlyBundledWith = ["frame"],
        })
        .Spare("battery", Audience.Nobody)
        .Support(_ => new() { SecurityUpdateYears = 4, FunctionalityUpdateYears = new(2, null), CountedFrom = CountedFrom.Release });
}
