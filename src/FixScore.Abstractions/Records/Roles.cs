using System.Collections.Frozen;
using System.Collections.Immutable;

namespace FixScore.Records;

/// <summary>Roles of parts that have a meaning. The list is open: any slug is a role.</summary>
public static class Roles
{
    /// <summary>The main board.</summary>
    public const string Mainboard = "mainboard";

    /// <summary>The battery.</summary>
    public const string Battery = "battery";

    /// <summary>The display assembly.</summary>
    public const string DisplayAssembly = "display-assembly";

    /// <summary>All roles with a meaning, in the order in which lists show them.</summary>
    public static ImmutableArray<string> Known { get; } =
    [
        Mainboard, Battery, DisplayAssembly, "back-cover", "front-camera", "rear-camera", "charging-port", "button",
        "microphone", "speaker", "hinge", "frame", "shield", "bracket", "bezel", "charging-coil", "flat-cable", "antenna",
        "sim-tray", "hinge-cover", "protective-foil", "external-audio-connector", "vibration-motor", "fingerprint-sensor",
        "camera-window", "charger", "moisture-indicator",
    ];

    static readonly FrozenSet<string> InertRoles = FrozenSet.ToFrozenSet(
        ["frame", "shield", "bracket", "bezel", "hinge-cover", "camera-window", "protective-foil", "sim-tray"], StringComparer.Ordinal);

    /// <summary>Whether parts of this role cannot carry a code unless the record says otherwise.</summary>
    public static bool IsInert(string role) => InertRoles.Contains(role);
}
