using FixScore;
using FixScore.Criteria.Disassembly;

[assembly: Plugin<DisassemblyPlugin>]

namespace FixScore.Criteria.Disassembly;

/// <summary>Offers the criteria <c>disassembly-depth</c>, <c>fastener-reuse</c> and <c>tool-access</c>.</summary>
public sealed class DisassemblyPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry
        .Add(new DisassemblyDepthCriterion())
        .Add(new FastenerReuseCriterion())
        .Add(new ToolAccessCriterion());
}
