using FixScore.Pairing;

[assembly: FixScore.Plugin<FixScore.Criteria.Pairing.PairingPlugin>]

namespace FixScore.Criteria.Pairing;

/// <summary>Offers the criterion <c>software-pairing</c> and the check of records <c>swap-trials-agree</c>.</summary>
public sealed class PairingPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new SoftwarePairingCriterion()).Add(new PairingCheck());
}
