namespace FixScore.Criteria.Tests.Spares;

/// <summary>Devices of the nine priority parts with spares.</summary>
static class Offered
{
    /// <summary>The priority parts of Regulation (EU) 2023/1669 Annex IV point 5 for devices that do not fold.</summary>
    public static readonly ImmutableArray<string> Roles =
    [
        "display-assembly", "battery", "back-cover", "front-camera", "rear-camera", "charging-port", "button", "microphone", "speaker",
    ];

    public static Spare Spare(string part, OneOf<Audience> audience) => new() { Part = part, Audience = audience };

    /// <summary>A device with these spares; no joint ties its parts.</summary>
    public static TeardownRecord With(params IEnumerable<Spare> spares) => Sample.Record([.. Roles.Select(role => Sample.Part(role))]) with
    {
        Joints = [],
        Spares = [.. spares],
    };

    /// <summary>A device of which everyone can buy the first spares, and professional repairers the others.</summary>
    public static TeardownRecord ToEveryone(int first) =>
        With(Roles.Select((role, i) => Spare(role, i < first ? Audience.Public : Audience.Repairers)));

    /// <summary>The record with the spares of a part replaced.</summary>
    public static TeardownRecord But(this TeardownRecord record, string part, params IEnumerable<Spare> spares) =>
        record with { Spares = [.. record.Spares.Where(spare => spare.Part != part), .. spares] };
}
