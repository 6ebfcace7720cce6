[assembly: FixScore.Plugin<FixScore.Requirements.PairingLaws.PairingLawsPlugin>]

namespace FixScore.Requirements.PairingLaws;

/// <summary>Offers the requirement sets <c>us-co-hb24-1121</c>, <c>us-or-sb-1596</c> and <c>us-wa-hb-1483</c>.</summary>
public sealed class PairingLawsPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) =>
        registry.Add(new ColoradoRequirements()).Add(new OregonRequirements()).Add(new WashingtonRequirements());
}
