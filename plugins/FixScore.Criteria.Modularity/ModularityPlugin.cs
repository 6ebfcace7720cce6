using FixScore;
using FixScore.Criteria.Modularity;

[assembly: Plugin<ModularityPlugin>]

namespace FixScore.Criteria.Modularity;

/// <summary>Offers the criterion <c>part-modularity</c>.</summary>
public sealed class ModularityPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new PartModularityCriterion());
}
