using FixScore;
using FixScore.Criteria.Spares;

[assembly: Plugin<SparesPlugin>]

namespace FixScore.Criteria.Spares;

/// <summary>Offers the criteria <c>spare-availability</c>, <c>spare-terms</c> and <c>spare-price-ratio</c>.</summary>
public sealed class SparesPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) =>
        registry.Add(new SpareAvailabilityCriterion()).Add(new SpareTermsCriterion()).Add(new SparePriceRatioCriterion());
}
