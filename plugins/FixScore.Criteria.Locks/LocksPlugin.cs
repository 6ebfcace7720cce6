using FixScore;
using FixScore.Criteria.Locks;

[assembly: Plugin<LocksPlugin>]

namespace FixScore.Criteria.Locks;

/// <summary>Offers the criterion <c>lock-freedom</c>.</summary>
public sealed class LocksPlugin : IPlugin
{
    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => registry.Add(new LockFreedomCriterion());
}
