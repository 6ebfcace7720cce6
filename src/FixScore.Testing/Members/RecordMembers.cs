using System.Collections.Frozen;
using System.Collections.Immutable;

namespace FixScore.Testing;

/// <summary>The members of the record format that a criterion can read, point at, and miss.</summary>
static class RecordMembers
{
    const string ObservationPrefix = "observations/";

    /// <summary>All members, each once.</summary>
    public static ImmutableArray<Member> All { get; } =
    [
        RecordRoot.Place.Known("id"), .. DeviceMembers.All, .. PartMembers.All, .. JointMembers.All, .. OperationMembers.All,
        .. TrialMembers.All, .. SupplyMembers.All,
    ];

    static readonly FrozenDictionary<string, Member> ByPath = All.ToFrozenDictionary(member => member.Path, StringComparer.Ordinal);

    /// <summary>The member at a path exactly as listed; <c>null</c> when the format has none.</summary>
    public static Member? At(string path) => ByPath.GetValueOrDefault(path);

    /// <summary>Whether members inside the one at a path are listed.</summary>
    public static bool HasInside(string path) => All.Any(member =>
        member.Path.Length > path.Length && member.Path.StartsWith(path, StringComparison.Ordinal) && member.Path[path.Length] is '.' or '[');

    /// <summary>The member a criterion says it reads: <c>joints[]</c> means <c>joints</c>, <c>observations/acme.latch</c> the observations of that name.</summary>
    public static Member? Read(string path)
    {
        if (path.StartsWith(ObservationPrefix, StringComparison.Ordinal)) return SupplyMembers.Observation(path[ObservationPrefix.Length..]);
        return At(path.EndsWith("[]", StringComparison.Ordinal) ? path[..^2] : path);
    }
}
