using FixScore.Records;

namespace FixScore.Reporting.Pictures;

/// <summary>The form of a joint's line; a word stands on each line as well.</summary>
enum JointForm
{
    /// <summary>Turned.</summary>
    Screwed,

    /// <summary>Held by shape.</summary>
    Clipped,

    /// <summary>Stuck.</summary>
    Bonded,

    /// <summary>Carries current and parts again.</summary>
    Plugged,

    /// <summary>Made for good.</summary>
    Fused,

    /// <summary>All others.</summary>
    Loose,
}

/// <summary>Forms of lines by kind of joint. Our own choice, no source.</summary>
static class JointForms
{
    public static JointForm Of(JointKind kind) => kind switch
    {
        JointKind.Screw => JointForm.Screwed,
        JointKind.SnapFit or JointKind.PressFit or JointKind.Latch or JointKind.CableClamp => JointForm.Clipped,
        JointKind.Adhesive or JointKind.Tape or JointKind.Gasket => JointForm.Bonded,
        JointKind.Connector or JointKind.Contact => JointForm.Plugged,
        JointKind.Solder or JointKind.Weld or JointKind.Rivet => JointForm.Fused,
        _ => JointForm.Loose,
    };

    public static string Says(JointForm form) => form switch
    {
        JointForm.Screwed => "screws",
        JointForm.Clipped => "clips, press fits, latches, clamps",
        JointForm.Bonded => "adhesives, tapes, gaskets",
        JointForm.Plugged => "connectors, contacts",
        JointForm.Fused => "solder, welds, rivets",
        _ => "magnets, others",
    };
}
