using FixScore;
using FixScore.Criteria.Support;

[assembly: Plugin<SupportPlugin>]

namespace FixScore.Criteria.Support;

/// <summary>Offers the criterion <c>software-support</c>.</summary>
public sealed class SupportPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new SoftwareSupportCriterion());
}
