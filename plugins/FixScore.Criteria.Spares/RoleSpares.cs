using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>Whether a device has a role.</summary>
enum RoleStanding
{
    Present,
    Absent,
    NotExpected,
    NotRecorded,
}

/// <summary>Who can buy the spares of a role.</summary>
/// <param name="Role">The role.</param>
/// <param name="Standing">Whether the device has it.</param>
/// <param name="Parts">Its parts with their spares, in the order of the record.</param>
sealed record RoleSpares(string Role, RoleStanding Standing, ImmutableArray<PartSpares> Parts)
{
    /// <summary>Who can buy all of them: the worst part counts, and a role the device does not have hinders nobody.</summary>
    public AccessRange Access => Standing switch
    {
        RoleStanding.Present => new(Parts.Min(part => AccessRange.Of(part).Worst), Parts.Min(part => AccessRange.Of(part).Best)),
        RoleStanding.NotRecorded => AccessRange.Any,
        _ => AccessRange.Exactly(SpareAccess.Everyone),
    };

    public static RoleSpares Of(TeardownCase source, string role)
    {
        ImmutableArray<PartSpares> parts =
            [.. source.Record.Parts.Where(part => part.Role == role).Select(part => PartSpares.Of(source, part))];
        return new(role, parts.IsEmpty ? StandingOf(source.Record, role) : RoleStanding.Present, parts);
    }

    static RoleStanding StandingOf(TeardownRecord record, string role)
    {
        if (record.Absent.Contains(role)) return RoleStanding.Absent;
        return IsOnlyInFoldables(role) && DoesNotFold(record.Device) ? RoleStanding.NotExpected : RoleStanding.NotRecorded;
    }

    // Regulation (EU) 2023/1670 Annex II B and D 1.1(1); Regulation (EU) 2023/1669 Annex IV point 5: for foldable devices only.
    static bool IsOnlyInFoldables(string role) => role is "hinge" or "protective-foil";

    // Other kinds, such as laptops, have hinges whatever their display does.
    static bool DoesNotFold(Device device) => device is { Foldable: false, Kind: "smartphone" or "slate-tablet" };
}
