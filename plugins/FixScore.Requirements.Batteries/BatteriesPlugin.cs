[assembly: FixScore.Plugin<FixScore.Requirements.Batteries.BatteriesPlugin>]

namespace FixScore.Requirements.Batteries;

/// <summary>Offers the requirement set <c>eu-2023-1542</c>.</summary>
public sealed class BatteriesPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new BatteryRequirements());
}
