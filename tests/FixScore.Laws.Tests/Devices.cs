namespace FixScore.Laws.Tests;

/// <summary>Small invented devices that score what a test needs.</summary>
static class Devices
{
    /// <summary>The priority parts of a device that does not fold.</summary>
    public static readonly ImmutableArray<string> Priority =
        ["battery", "display-assembly", "back-cover", "front-camera", "rear-camera", "charging-port", "button", "microphone", "speaker"];

    static readonly Serialisation Free = new() { Notify = SerialAction.None, Authorise = SerialAction.None };

    /// <summary>All priority parts under the same brackets, so that each takes as many steps; no hinge.</summary>
    public static RecordBuilder Whole(int steps = 1, Reuse reuse = Reuse.Reusable, ToolClass? tool = null, bool clipped = false)
    {
        var device = new RecordBuilder().Part("mainboard").Absent("hinge").Brackets(steps - 1);
        if (tool is { } @class) device.Tool("driver", @class);
        foreach (var role in Priority) device.Held(role, steps - 1, reuse, tool is null ? [] : ["driver"], clipped);
        return device;
    }

    /// <summary>Brackets over each other, each taken out with bare hands: one step each.</summary>
    public static RecordBuilder Brackets(this RecordBuilder device, int count)
    {
        for (var i = 1; i <= count; i++)
            device.Part($"bracket-{i}", "bracket").Joint($"bracket-{i}-clip", [$"bracket-{i}", "mainboard"], JointKind.SnapFit, joint => joint with { Reuse = Reuse.Reusable })
                .Operation($"take-bracket-{i}", OperationAction.Lift, EntryList.Of<string>(), [$"bracket-{i}-clip"], [$"bracket-{i}"], Under(i - 1));
        return device;
    }

    /// <summary>A part under brackets, held by one joint; clipped ones are loosened by hand before.</summary>
    public static RecordBuilder Held(
        this RecordBuilder device, string role, int under, Reuse reuse = Reuse.Reusable, ImmutableArray<string> tools = default, bool clipped = false, string? id = null)
    {
        var part = id ?? role;
        device.Part(part, role, configure: each => each with { Serialised = Free })
            .Joint(part + "-screw", [part, "mainboard"], JointKind.Screw, joint => joint with { Reuse = reuse });
        if (clipped)
            device.Joint(part + "-clip", [part, "mainboard"], JointKind.SnapFit, joint => joint with { Reuse = Reuse.Reusable })
                .Operation("unclip-" + part, OperationAction.Unclip, EntryList.Of<string>(), [part + "-clip"], [], Under(under));
        return device.Operation(
            "take-" + part, OperationAction.Unscrew, tools.IsDefault ? EntryList.Of<string>() : EntryList.Of(tools), [part + "-screw"], [part],
            clipped ? [new Condition.Undone(part + "-clip")] : Under(under));
    }

    /// <summary>A hinge that comes out in one step.</summary>
    public static RecordBuilder Hinged(this RecordBuilder device) => device.With(record => record with { Absent = default }).Held("hinge", 0);

    /// <summary>Spares of all priority parts: those of the roles named for everyone, the others for professional repairers.</summary>
    public static RecordBuilder Spares(this RecordBuilder device, bool fasteners, params ImmutableArray<string> everyone)
    {
        foreach (var role in Priority)
            device.Spare(role, everyone.Contains(role) ? Audience.Public : Audience.Repairers, spare => spare with { FastenersIncluded = new(fasteners, []) });
        return device;
    }

    public static RecordBuilder Years(this RecordBuilder device, decimal years, CountedFrom from = CountedFrom.EndOfPlacement) =>
        device.Support(support => support with
        {
            SecurityUpdateYears = years, CorrectiveUpdateYears = years, FunctionalityUpdateYears = years, CountedFrom = from,
        });

    /// <summary>Documents on all subjects; board schematics at least for repairers.</summary>
    public static RecordBuilder Documents(this RecordBuilder device, Audience audience, DocumentCost cost = DocumentCost.Free)
    {
        foreach (var subject in Enum.GetValues<DocumentSubject>())
            device.Document(subject, subject == DocumentSubject.BoardSchematic ? Audience.Repairers : audience, cost);
        return device;
    }

    /// <summary>What the maker demands when the battery is replaced.</summary>
    public static RecordBuilder BatteryDemands(this RecordBuilder device, SerialAction notify, SerialAction authorise) =>
        device.With(record => record with
        {
            Parts = EntryList.Of(record.Parts.AsArray().Select(part =>
                part.Role == "battery" ? part with { Serialised = new() { Notify = notify, Authorise = authorise } } : part).ToImmutableArray()),
        });

    static ImmutableArray<Condition> Under(int brackets) => brackets == 0 ? [] : [new Condition.Removed($"bracket-{brackets}")];
}
