using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Reporting.Pictures;

/// <summary>Roles whose parts get a route when none are asked for.</summary>
/// <remarks>Source: Regulation (EU) 2023/1669, Annex IV point 5, the priority parts of phones and tablets.</remarks>
static class PriorityRoles
{
    /// <summary>The roles, the hinge for devices that fold.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        Roles.Battery, Roles.DisplayAssembly, "back-cover", "front-camera", "rear-camera", "charging-port", "button", "microphone", "speaker", "hinge",
    ];

    /// <summary>Ids of the parts that have such a role: role by role, then in the order of the record.</summary>
    public static ImmutableArray<string> PartsOf(TeardownRecord record) =>
        [.. All.SelectMany(role => record.Parts.Where(part => part.Role == role)).Select(part => part.Id)];
}
