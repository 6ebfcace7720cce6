using FixScore.Testing;

namespace FixScore.Criteria.Tests.Disassembly;

/// <summary>Invented devices to take apart, and the scale of Regulation (EU) 2023/1669: 5 is best, 1 is worst.</summary>
static class Device
{
    public static readonly Scale Law = new(1, 5);

    /// <summary>Layers clipped over each other, pulled off by hand one by one; the last one is the battery.</summary>
    public static RecordBuilder Layers(int depth, Func<Part, Part>? battery = null)
    {
        var builder = new RecordBuilder().Part("frame");
        for (var i = 1; i <= depth; i++)
        {
            var (id, over) = (Layer(i, depth), i > 1 ? ImmutableArray.Create(Layer(i - 1, depth)) : []);
            builder.Part(id, configure: i == depth ? battery : null)
                .Joint($"clip-{i}", [id, "frame"], JointKind.SnapFit, joint => joint with { Reuse = Reuse.Reusable, Under = over })
                .Operation($"pull-{i}", OperationAction.Pull, [], [$"clip-{i}"], [id]);
        }
        return builder;
    }

    /// <summary>A glued cover over a screwed battery: heat gun and pick, then a driver.</summary>
    public static RecordBuilder Phone(OneOf<Reuse>? glue = null, OneOf<Reuse>? screws = null) => new RecordBuilder()
        .Part("frame").Part("cover", "back-cover").Part("battery").Part("camera", "rear-camera", on: "battery")
        .Bond("glue", ["cover", "frame"], configure: joint => joint with { Reuse = glue ?? Reuse.Removable })
        .Screw("screws", ["battery", "frame"], "hexalobular", 1.4m, 3, 4, joint => joint with { Reuse = screws ?? Reuse.Reusable, Under = ["cover"] })
        .Tool("heat-gun", ToolClass.Commercial, tool => tool with { HeatC = 80 }).Tool("pick", ToolClass.Basic).Tool("driver", ToolClass.Basic)
        .Operation("warm", OperationAction.Heat, ["heat-gun"])
        .Operation("open", OperationAction.CutAdhesive, ["pick"], ["glue"], ["cover"], configure: open => open with { DirectlyAfter = "warm" })
        .Operation("unscrew", OperationAction.Unscrew, ["driver"], ["screws"], ["battery"]);

    public static Outcome Judged(
        this IPartCriterion criterion, TeardownRecord record, string part, ImmutableArray<string> roles, params ReadOnlySpan<(Option, object)> options)
    {
        var outcome = criterion.Judge(Contexts.For(criterion, new RecordCase(record), part, roles, Law, options));
        outcome.PointsInto(record);
        return outcome;
    }

    public static Outcome OnBattery(this IPartCriterion criterion, TeardownRecord record, params ReadOnlySpan<(Option, object)> options) =>
        criterion.Judged(record, "battery", ["battery"], options);

    static string Layer(int i, int depth) => i == depth ? "battery" : $"layer-{i}";
}
