namespace FixScore.Criteria.Tests;

/// <summary>Small records to judge. Devices are invented.</summary>
static class Sample
{
    static readonly AssessedUnit Unit = new() { Id = "unit-a" };

    public static TeardownRecord Record(params ReadOnlySpan<Part> parts) => new()
    {
        Id = "sample",
        Device = new() { Maker = "Example", Model = "One", Kind = "smartphone" },
        Assessment = new() { Assessor = "bench", Date = new(2025, 7, 1), Units = [Unit] },
        Parts = EntryList.Of(parts),
    };

    public static Part Part(string id, string? role = null, string? on = null) =>
        new() { Id = id, Role = role ?? id, On = on, Inert = Roles.IsInert(role ?? id) };

    public static Joint Joint(string id, JointKind kind, params ImmutableArray<string> joins) =>
        new() { Id = id, Kind = kind, Joins = joins.IsEmpty ? ["frame", "mainboard"] : joins };

    public static Joint Screw(string id, Quantity count, string drive, decimal diameter, decimal length) =>
        Screw(id, count, new Screw(drive, diameter, length));

    public static Joint Screw(string id, Quantity count, Screw? screw) =>
        Joint(id, JointKind.Screw) with { Count = count, Screw = screw };

    /// <summary>A frame with a board, held by these joints.</summary>
    public static TeardownRecord Held(params ReadOnlySpan<Joint> joints) =>
        Record(Part("frame"), Part("mainboard")) with { Joints = EntryList.Of(joints) };
}
