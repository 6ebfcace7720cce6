using FixScore;
using FixScore.Criteria.Fasteners;

[assembly: Plugin<FastenersPlugin>]

namespace FixScore.Criteria.Fasteners;

/// <summary>Offers the criterion <c>fastener-diversity</c>.</summary>
public sealed class FastenersPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new FastenerDiversityCriterion());
}
