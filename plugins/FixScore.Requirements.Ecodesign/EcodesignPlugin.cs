[assembly: FixScore.Plugin<FixScore.Requirements.Ecodesign.EcodesignPlugin>]

namespace FixScore.Requirements.Ecodesign;

/// <summary>Offers the requirement set <c>eu-2023-1670</c>.</summary>
public sealed class EcodesignPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new EcodesignRequirements());
}
