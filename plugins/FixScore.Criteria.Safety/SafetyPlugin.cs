using FixScore;
using FixScore.Criteria.Safety;

[assembly: Plugin<SafetyPlugin>]

namespace FixScore.Criteria.Safety;

/// <summary>Offers the criterion <c>hazard-exposure</c>.</summary>
public sealed class SafetyPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new HazardExposureCriterion());
}
