using FixScore;
using FixScore.Criteria.Cost;

[assembly: Plugin<CostPlugin>]

namespace FixScore.Criteria.Cost;

/// <summary>Offers the criterion <c>repair-cost-ratio</c>.</summary>
public sealed class CostPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new RepairCostRatioCriterion());
}
