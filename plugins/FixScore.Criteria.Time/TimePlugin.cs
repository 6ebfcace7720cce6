using FixScore;
using FixScore.Criteria.Time;

[assembly: Plugin<TimePlugin>]

namespace FixScore.Criteria.Time;

/// <summary>Offers the criterion <c>disassembly-time</c>.</summary>
public sealed class TimePlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new DisassemblyTimeCriterion());
}
