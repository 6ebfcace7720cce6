using FixScore.Criteria.Adhesives;

namespace FixScore.Criteria.Tests.Adhesives;

/// <summary>A battery glued to a frame, and ways to get it out.</summary>
static class Bonded
{
    /// <summary>Assumed points taken as they are.</summary>
    public static readonly (Option, object) Firm = (AdhesiveStrengthOptions.Tolerance, 0m);

    public static readonly Joint Glue = Sample.Joint("glue", JointKind.Adhesive, "battery", "frame");

    public static readonly ImmutableArray<Tool> Tools =
    [
        new() { Id = "card", Name = "plastic card", Class = ToolClass.Basic },
        new() { Id = "plate-60", Name = "warm plate", Class = ToolClass.Commercial, HeatC = 60 },
        new() { Id = "plate-100", Name = "hot plate", Class = ToolClass.Commercial, HeatC = 100 },
        new() { Id = "oven", Name = "oven of unmeasured heat", Class = ToolClass.Commercial, HeatC = default(Quantity) },
        new() { Id = "dropper", Name = "dropper", Class = ToolClass.Commercial, Solvent = "isopropanol" },
    ];

    public static Operation Out(params ReadOnlySpan<string> tools) => new()
    {
        Id = "out", Action = OperationAction.Pry, Tools = EntryList.Of(tools), Undoes = ["glue"], Removes = ["battery"],
    };

    public static Operation Warm(params ReadOnlySpan<string> tools) =>
        new() { Id = "warm", Action = OperationAction.Heat, Tools = EntryList.Of(tools) };

    public static TeardownRecord By(params ReadOnlySpan<Operation> operations) => With(Glue, operations);

    public static TeardownRecord With(Joint bond, params ReadOnlySpan<Operation> operations) =>
        Sample.Record(Sample.Part("frame"), Sample.Part("battery")) with
        {
            Joints = [bond],
            Tools = EntryList.Of(Tools),
            Operations = EntryList.Of(operations),
        };
}
