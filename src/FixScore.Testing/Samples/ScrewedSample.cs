using FixScore.Records;

namespace FixScore.Testing;

static class ScrewedSample
{
    public static TeardownRecord Build() => Supply(Work(Joints(Parts(new RecordBuilder("screwed-modular"))))).Build();

    static RecordBuilder Parts(RecordBuilder to) => to
        .Device(device => device with { Kind = "laptop", Released = new(2024, 9, 1), Price = new(899, "EUR", true) })
        .Part("frame").Part("mainboard").Part("battery").Part("display", "display-assembly").Part("bottom", "back-cover")
        .Part("fan", configure: fan => fan with { Serialised = new() { Notify = SerialAction.None, Authorise = SerialAction.None } })
        .Absent("charging-coil");

    static RecordBuilder Joints(RecordBuilder to) => to
        .Screw("bottom-screws", ["bottom", "frame"], "cross-recess", 2.5m, 6, 8, Reusable())
        .Screw("battery-screws", ["battery", "frame"], "cross-recess", 2, 4, 4, Reusable("bottom"))
        .Plug("battery-plug", ["battery", "mainboard"], ConnectorType.Plug, Reusable("bottom"))
        .Screw("fan-screws", ["fan", "mainboard"], "cross-recess", 2, 4, 3, Reusable("bottom"))
        .Plug("fan-plug", ["fan", "mainboard"], ConnectorType.Plug, Reusable("bottom"))
        .Screw("hinge-screws", ["display", "frame"], "cross-recess", 3, new(6, 8), 4, Reusable("bottom"))
        .Plug("display-plug", ["display", "mainboard"], ConnectorType.LatchedFlatCable, Reusable("bottom"))
        .Screw("board-screws", ["mainboard", "frame"], "cross-recess", 2, 4, 6, Reusable("battery", "fan"));

    static RecordBuilder Work(RecordBuilder to) => to
        .Tool("driver", ToolClass.Basic, tool => tool with { SuppliedWith = [Tool.Product] })
        .Operation("open", OperationAction.Unscrew, ["driver"], ["bottom-screws"], ["bottom"], seconds: 90, configure: Easy)
        .Operation("unplug-battery", OperationAction.Unplug, [], ["battery-plug"], seconds: 5, configure: Easy)
        .Operation("take-battery", OperationAction.Unscrew, ["driver"], ["battery-screws"], ["battery"], [new Condition.Done("safe")], 40, Easy)
        .Operation("take-fan", OperationAction.Unscrew, ["driver"], ["fan-screws", "fan-plug"], ["fan"], [new Condition.Done("safe")], new(30, 50), Easy)
        .Operation("take-display", OperationAction.Unscrew, ["driver"], ["hinge-screws", "display-plug"], ["display"], [new Condition.Done("safe")], 75, Easy)
        .Operation("take-board", OperationAction.Unscrew, ["driver"], ["board-screws"], ["mainboard"], seconds: 80, configure: Easy)
        .Milestone("safe", new Condition.Removed("bottom"), new Condition.Undone("battery-plug"))
        .Sequence("way-to-battery", "battery", SequenceAuthor.Maker, "open", "unplug-battery", "take-battery");

    static RecordBuilder Supply(RecordBuilder to) => to
        .Swap("swap-display", "unit-a", [("display", "unit-b")], ("picture", SwapResult.Works))
        .Swap("swap-battery", "unit-a", [("battery", "unit-b")], ("charging", SwapResult.Works))
        .Document(DocumentSubject.DisassemblyInstructions, Audience.Public, DocumentCost.Free, document => document with { Years = new(7, 10) })
        .Document(DocumentSubject.SparePartsList, Audience.Public, DocumentCost.Free)
        .Document(DocumentSubject.TorqueValues, Audience.Repairers, DocumentCost.ReasonableFee)
        .Spare("battery", Audience.Public, spare => spare with
        {
            Years = 10, DeliveryDays = new(2, 5), Price = new(59, "EUR", true), FastenersIncluded = new(false, ["battery-screws"]),
        })
        .Spare("display", Audience.Public, spare => spare with { Years = 7, DeliveryDays = 5, Price = new(149, "EUR", true), FastenersIncluded = new(true, []) })
        .Support(_ => new()
        {
            SecurityUpdateYears = 8, CorrectiveUpdateYears = 8, FunctionalityUpdateYears = 5, CountedFrom = CountedFrom.EndOfPlacement,
        })
        .With(record => record with { Locks = [], Consumables = [] });

    static Func<Joint, Joint> Reusable(params string[] under) =>
        joint => joint with { Reuse = Reuse.Reusable, Hidden = false, Under = [.. under] };

    static Operation Easy(Operation operation) => operation with
    {
        ReassemblySeconds = operation.Seconds, Environment = WorkEnvironment.Use, Skill = Skill.Layman, Hazards = [],
    };
}
