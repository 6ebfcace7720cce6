using FixScore.Testing;

namespace FixScore.Criteria.Tests.Time;

/// <summary>An invented phone on the bench: warm the cover, cut it open, unscrew the battery by one of two ways.</summary>
static class Benched
{
    public static RecordBuilder Phone(Quantity? warm = null, Quantity? wait = null, Quantity? open = null, Quantity? unscrew = null) => new RecordBuilder()
        .Part("frame").Part("cover", "back-cover").Part("battery")
        .Bond("glue", ["cover", "frame"])
        .Screw("screws", ["battery", "frame"], "hexalobular", 1.4m, 3, 4, joint => joint with { Under = ["cover"] })
        .Tool("heat-gun", ToolClass.Commercial, tool => tool with { HeatC = 80 }).Tool("pick", ToolClass.Basic).Tool("driver", ToolClass.Basic)
        .Operation("warm", OperationAction.Heat, ["heat-gun"], seconds: warm, configure: heat => heat with { WaitSeconds = wait })
        .Operation("open", OperationAction.CutAdhesive, ["pick"], ["glue"], ["cover"], seconds: open, configure: cut => cut with { DirectlyAfter = "warm" })
        .Operation("unscrew", OperationAction.Unscrew, ["driver"], ["screws"], ["battery"], seconds: unscrew);

    /// <summary>One operation that frees the battery.</summary>
    public static RecordBuilder Pulled(Func<Operation, Operation> configure) => new RecordBuilder()
        .Part("frame").Part("battery").Joint("clip", ["battery", "frame"], JointKind.SnapFit)
        .Operation("pull", OperationAction.Unclip, [], ["clip"], ["battery"], configure: configure);
}
