using FixScore.Records;

namespace FixScore.Testing;

static class UnknownSample
{
    public static TeardownRecord Build() => new RecordBuilder("everything-unknown")
        .Part("mainboard").Part("battery").Part("display", "display-assembly").Part("cover", "back-cover")
        .Joint("display-glue", ["display", "mainboard"], JointKind.Adhesive)
        .Joint("cover-screws", ["cover", "mainboard"], JointKind.Screw)
        .Joint("battery-plug", ["battery", "mainboard"], JointKind.Connector)
        .Bond("battery-bond", ["battery", "mainboard"])
        .Tool("some-tool", new(ToolClass.Basic, ToolClass.Commercial, ToolClass.Specialised, ToolClass.Proprietary))
        .Operation("open-cover", OperationAction.Other, undoes: ["cover-screws"], removes: ["cover"])
        .Operation("free-battery", OperationAction.Pull, undoes: ["battery-plug", "battery-bond"], removes: ["battery"])
        .Swap("swap-battery", "unit-a", [("battery", "unit-b")], ("charging", SwapResult.Untested))
        .Lock("open-lock", "unit-a", LockState.Locked, LockState.Unlocked)
        .Document(DocumentSubject.DisassemblyInstructions)
        .Spare("battery")
        .Support(support => support)
        .Build();
}
