using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Benchmarks.RouteProofs;

/// <summary>What lies over what in a generated device.</summary>
enum DeviceShape
{
    /// <summary>Each part lies under one or two of the four before it: nearly everything is in the way of the deepest.</summary>
    Stack,

    /// <summary>Layers as many as deep, each under a plate that lies under the plate above: most parts lie beside the way.</summary>
    Layers,
}

/// <summary>A device generated from a seed: parts screwed, plugged, clipped and glued to a frame, each covered by parts above it.</summary>
/// <remarks>One part in five has two ways: a second way to undo one of its joints, or being folded aside on its cable. Invented; no real device.</remarks>
/// <param name="Record">The record.</param>
/// <param name="Deepest">Id of the part under the longest chain of covers; the last of several.</param>
sealed record DeviceInstance(TeardownRecord Record, string Deepest)
{
    public static DeviceInstance Of(int parts, int seed, DeviceShape shape = DeviceShape.Stack) => new DeviceBuild(parts, seed, shape).Instance;
}

/// <summary>Draws a device, top first.</summary>
sealed class DeviceBuild
{
    const string Frame = "frame";
    const double TwoWays = 0.2;
    static readonly ImmutableArray<Tool> Tools =
    [
        Tool("driver-1"), Tool("driver-2"), Tool("driver-3"), Tool("opening-pick"), Tool("spudger"), Tool("tweezers"), Tool("warm-mat") with { HeatC = 80 },
    ];

    readonly Random random;
    readonly int layer;
    readonly List<Part> parts = [];
    readonly List<Joint> joints = [];
    readonly List<Operation> operations = [];
    readonly List<int> depths = [];

    public DeviceBuild(int count, int seed, DeviceShape shape)
    {
        random = new(seed);
        layer = shape == DeviceShape.Stack ? 0 : (int)Math.Ceiling(Math.Sqrt(count));
        for (var i = 0; i < count; i++) AddPart(i);
        parts.Add(new() { Id = Frame, Role = Frame });
        Instance = new(Record(), $"part-{depths.LastIndexOf(depths.Max())}");
    }

    public DeviceInstance Instance { get; }

    static Tool Tool(string id) => new() { Id = id, Name = id, Class = ToolClass.Basic };

    TeardownRecord Record() => new()
    {
        Id = "generated-device",
        Device = new() { Maker = "Invented Maker", Model = "Stack", Kind = "smartphone" },
        Assessment = new() { Assessor = "generator", Date = new(2026, 1, 15), Units = [new() { Id = "unit-a" }, new() { Id = "unit-b" }] },
        Parts = EntryList.Of(parts.ToImmutableArray()),
        Joints = EntryList.Of(joints.ToImmutableArray()),
        Tools = EntryList.Of(Tools),
        Operations = EntryList.Of(operations.ToImmutableArray()),
    };

    void AddPart(int number)
    {
        var id = $"part-{number}";
        int[] covers = number == 0 ? [] : layer == 0 ? CoversInStack(number) : CoversInLayers(number);
        depths.Add(covers.Length == 0 ? 0 : covers.Max(cover => depths[cover]) + 1);
        parts.Add(new() { Id = id, Role = id });
        var first = joints.Count;
        var kinds = new[] { JointKind.Screw, JointKind.Screw, JointKind.Connector, JointKind.Adhesive, JointKind.SnapFit };
        random.Shuffle(kinds);
        foreach (var kind in kinds[..random.Next(1, 4)]) AddJoint(id, kind, covers);
        Add(OperationAction.Lift, Chance(0.3) ? ["tweezers"] : [], operation => operation with { Removes = [id] });
        if (Chance(TwoWays)) AddSecondWay(id, joints[first..]);
    }

    int[] CoversInStack(int number) =>
        [.. Enumerable.Range(Math.Max(0, number - 4), Math.Min(4, number)).OrderBy(_ => random.Next()).Take(random.Next(1, 3)).Order()];

    // A plate lies under the plate above and perhaps a part beside that; the rest of a layer lies under its plate and perhaps a neighbour.
    int[] CoversInLayers(int number)
    {
        var plate = number - number % layer;
        if (plate == number) return Chance(0.5) ? [number - layer] : [number - layer, number - random.Next(1, layer)];
        return number - 1 == plate || Chance(0.7) ? [plate] : [plate, number - 1];
    }

    void AddJoint(string part, JointKind kind, int[] covers)
    {
        var joint = new Joint
        {
            Id = $"joint-{joints.Count}",
            Joins = [part, Frame],
            Kind = kind,
            Under = [.. covers.Where(_ => covers.Length == 1 || Chance(0.8)).Select(cover => $"part-{cover}")],
        };
        joints.Add(joint);
        if (kind == JointKind.Adhesive) AddHeated(joint);
        else Undo(joint, kind switch
        {
            JointKind.Screw => [$"driver-{random.Next(1, 4)}"],
            JointKind.Connector => Chance(0.5) ? ["spudger"] : [],
            _ => ["opening-pick"],
        });
    }

    void AddHeated(Joint joint)
    {
        Add(OperationAction.Heat, ["warm-mat"], operation => operation with { After = [.. joint.Under.Select(part => new Condition.Away(part))] });
        var heat = operations[^1].Id;
        Undo(joint, ["opening-pick"], operation => operation with { DirectlyAfter = heat });
    }

    void AddSecondWay(string part, List<Joint> own)
    {
        if (own.Find(joint => joint.Kind == JointKind.Connector) is { } cable && own.Count > 1)
            Add(OperationAction.FoldAside, [], operation => operation with { Moves = [part], HoldsBy = [cable.Id] });
        else
            Undo(own[random.Next(own.Count)], Chance(0.5) ? ["spudger", "tweezers"] : ["spudger"]);
    }

    void Undo(Joint joint, EntryList<string> tools, Func<Operation, Operation>? more = null) =>
        Add(OperationAction.Other, tools, operation => (more?.Invoke(operation) ?? operation) with { Undoes = [joint.Id] });

    void Add(OperationAction action, EntryList<string> tools, Func<Operation, Operation> more) =>
        operations.Add(more(new() { Id = $"operation-{operations.Count}", Action = action, Tools = tools, Seconds = random.Next(2, 60) }));

    bool Chance(double share) => random.NextDouble() < share;
}
