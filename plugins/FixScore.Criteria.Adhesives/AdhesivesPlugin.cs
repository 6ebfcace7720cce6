using FixScore;
using FixScore.Criteria.Adhesives;

[assembly: Plugin<AdhesivesPlugin>]

namespace FixScore.Criteria.Adhesives;

/// <summary>Offers the criterion <c>adhesive-strength</c>.</summary>
public sealed class AdhesivesPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new AdhesiveStrengthCriterion());
}
