using FixScore;
using FixScore.Criteria.Disassembly;
using FixScore.Disassembly;

[assembly: Plugin<DisassemblyPlugin>]

namespace FixScore.Criteria.Disassembly;

/// <summary>Offers the criteria <c>disassembly-depth</c>, <c>fastener-reuse</c> and <c>tool-access</c>, and checks records for faults that show only on routes.</summary>
public sealed class DisassemblyPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry
        .Add(new DisassemblyDepthCriterion())
        .Add(new FastenerReuseCriterion())
        .Add(new ToolAccessCriterion())
        .Add(new RouteCheck());
}
