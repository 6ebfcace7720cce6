using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>What 1.1(5) asks of every operation on the way to a part: the worst fastener, tool, environment and skill allowed.</summary>
sealed record DisassemblyRule(FastenerLevel Fastener, ToolLevel Tool, WorkEnvironment Environment, Skill Skill)
{
    // Annex II B and D 1.1(5), consolidated text of 20 June 2025 (read). Specialised tools are on sale, so commercially available.
    public static readonly DisassemblyRule ByProfessionals = new(FastenerLevel.Removable, ToolLevel.Specialised, WorkEnvironment.Workshop, Skill.Generalist);
    public static readonly DisassemblyRule ByEndUsers = new(FastenerLevel.Removable, ToolLevel.WithProduct, WorkEnvironment.Use, Skill.Layman);
    public static readonly DisassemblyRule BatteryByEndUsers = ByEndUsers with { Fastener = FastenerLevel.Resupplied };

    public Answer Judge(EcodesignDevice device, Part part) => WayAnswers.To(device.Case, part, Aspects(device.Case, part), device.Cancellation);

    ImmutableArray<Aspect> Aspects(TeardownCase source, Part part)
    {
        var joints = source.Record.Joints.ToDictionary(joint => joint.Id, StringComparer.Ordinal);
        var tools = source.Record.Tools.ToDictionary(tool => tool.Id, StringComparer.Ordinal);
        return
        [
            new("fastener", operation => Known.All(Undone(operation).Select(FastenerFits)), operation =>
                string.Join(", ", Undone(operation).Where(joint => FastenerFits(joint) != true).Select(joint => $"{joint.Id} {Shown.Of(FastenerLevels.Of(source, part.Id, joint))}"))),
            new("tool", ToolsFit, operation =>
                operation.Tools.IsRecorded ? string.Join(", ", operation.Tools.Select(id => $"{id} {Shown.Of(ToolLevels.Of(source, part.Id, tools[id]))}")) : "tools unknown"),
            new("environment", operation => operation.Environment.Fits(environment => environment <= Environment), operation => $"environment {Shown.Of(operation.Environment)}"),
            new("skill", operation => operation.Skill.Fits(skill => skill <= Skill), operation => $"skill {Shown.Of(operation.Skill)}"),
        ];

        IEnumerable<Joint> Undone(Operation operation) => operation.Undoes.Select(id => joints[id]).Where(joint => !joint.Integral);

        bool? FastenerFits(Joint joint) => FastenerLevels.Of(source, part.Id, joint).Fits(level => level <= Fastener);

        bool? ToolsFit(Operation operation) => Known.Any(
            [operation.Tools.IsRecorded ? SetFits(operation.Tools.AsArray()) : null, .. operation.OrTools.Select(SetFits)]);

        bool? SetFits(ImmutableArray<string> set) => Known.All(set.Select(id => ToolLevels.Of(source, part.Id, tools[id]).Fits(level => level <= Tool)));
    }
}
