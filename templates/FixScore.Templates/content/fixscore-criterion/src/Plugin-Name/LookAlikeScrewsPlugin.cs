using FixScore;
using PluginNamespace;

[assembly: Plugin<LookAlikeScrewsPlugin>]

namespace PluginNamespace;

/// <summary>Offers the criterion <c>plugin-vendor.look-alike-screws</c>.</summary>
public sealed class LookAlikeScrewsPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new LookAlikeScrewsCriterion());
}
