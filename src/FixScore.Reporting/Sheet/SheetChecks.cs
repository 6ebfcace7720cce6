using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Reporting.Sheet;

/// <summary>Functions to check by the roles present. Common practice, no source.</summary>
static class SheetChecks
{
    static readonly ImmutableArray<(string Role, string Check)> ByRole =
    [
        (Roles.Mainboard, "starts, connects to a network, keeps its data (back it up first)"),
        (Roles.Battery, "charge state and health as shown; no swelling, no smell"),
        (Roles.DisplayAssembly, "picture without faults, brightness in steps, touch over the whole area"),
        ("front-camera", "front camera focuses and takes a picture"),
        ("rear-camera", "rear camera focuses and takes a picture"),
        ("charging-port", "charges and passes data in both plug positions"),
        ("charging-coil", "charges without cable"),
        ("button", "each button responds once per press"),
        ("microphone", "a recording through each microphone can be understood"),
        ("speaker", "each speaker sounds alone without rattle"),
        ("external-audio-connector", "sound through the audio connector on both sides"),
        ("hinge", "opens and closes smoothly and holds its angle"),
        ("antenna", "reception of each radio as before in the same place"),
        ("sim-tray", "the card is found"),
        ("vibration-motor", "vibrates"),
        ("fingerprint-sensor", "knows an enrolled finger and refuses another"),
        ("moisture-indicator", "colour of the moisture indicator, noted"),
    ];

    static readonly ImmutableArray<string> OnlyAfter =
    [
        "no screw and no part is left over",
        "nothing rattles, every edge is closed, no cable is pinched",
        "the first charge is watched: no heat beyond the usual, no smell, no swelling",
        "messages about parts that the device does not accept, noted",
    ];

    public static ImmutableArray<string> Before(TeardownRecord record) =>
        [.. ByRole.Where(each => record.Parts.Any(part => part.Role == each.Role)).Select(each => $"{each.Role}: {each.Check}")];

    public static ImmutableArray<string> After(TeardownRecord record) => [.. OnlyAfter, .. Before(record)];
}
