namespace FixScore;

/// <summary>What an assembly offers: criteria, requirement sets and record checks.</summary>
/// <remarks>A plugin file names its plugin by <see cref="PluginAttribute{TPlugin}"/>: no scanning, nothing for a trimmer to lose.</remarks>
public interface IPlugin
{
    /// <summary>Adds what the plugin offers. Called once per catalogue.</summary>
    void Register(IPluginRegistry registry);
}

/// <summary>Where a plugin registers.</summary>
public interface IPluginRegistry
{
    /// <summary>Adds a criterion; its id must be new.</summary>
    IPluginRegistry Add(ICriterion criterion);

    /// <summary>Adds a set of requirements; its id must be new.</summary>
    IPluginRegistry Add(IRequirementSet requirements);

    /// <summary>Adds a check of records; its id must be new.</summary>
    IPluginRegistry Add(IRecordCheck check);
}

/// <summary>Names the plugin of an assembly. Use <see cref="PluginAttribute{TPlugin}"/>.</summary>
[AttributeUsage(AttributeTargets.Assembly)]
public abstract class PluginAttribute : Attribute
{
    private protected PluginAttribute() { }

    /// <summary>Makes the plugin.</summary>
    public abstract IPlugin Create();
}

/// <summary>Names the plugin of an assembly: <c>[assembly: Plugin&lt;AcmePlugin&gt;]</c>.</summary>
/// <typeparam name="TPlugin">The plugin.</typeparam>
public sealed class PluginAttribute<TPlugin> : PluginAttribute where TPlugin : IPlugin, new()
{
    /// <inheritdoc/>
    public override IPlugin Create() => new TPlugin();
}
