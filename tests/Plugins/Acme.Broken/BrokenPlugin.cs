using FixScore;

[assembly: Plugin<Acme.Broken.BrokenPlugin>]

namespace Acme.Broken;

/// <summary>A plugin that cannot be made.</summary>
public sealed class BrokenPlugin : IPlugin
{
    /// <summary>Throws.</summary>
    public BrokenPlugin() => throw new NotSupportedException("no");

    /// <inheritdoc/>
    public void Register(IPluginRegistry registry) => throw new NotSupportedException("no");
}
