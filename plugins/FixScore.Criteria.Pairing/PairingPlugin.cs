using FixScore.Pairing;
using FixScore.Pairing.Ties;

[assembly: FixScore.Plugin<FixScore.Criteria.Pairing.PairingPlugin>]

namespace FixScore.Criteria.Pairing;

/// <summary>Offers the criterion <c>software-pairing</c> and the checks of records <c>swap-trials-agree</c>, <c>swap-trials-ties</c> and <c>swap-trials-functions</c>.</summary>
public sealed class PairingPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new SoftwarePairingCriterion()).Add(new PairingCheck())
        .Add(new TieCheck()).Add(new FunctionCoverageCheck());
}
