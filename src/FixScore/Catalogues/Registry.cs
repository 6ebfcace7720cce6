using FixScore.Plugins;

namespace FixScore;

/// <summary>What one plugin offers, before any of it is installed. Offers that come after it was read are passed over.</summary>
/// <param name="plugin">The plugin.</param>
/// <param name="key">Names the plugin's type and build, so that repeats are seen.</param>
/// <param name="from">The plugin and where it is from, for people.</param>
/// <param name="watched">How calls are watched; <c>null</c> for what is compiled in.</param>
sealed class Registry(PluginIdentity plugin, string key, string from, Watched? watched) : IPluginRegistry
{
    public string Key => key;

    public string From => from;

    public List<(string Id, Installed<ICriterion> Item)> Criteria { get; } = [];

    public List<(string Id, Installed<IRequirementSet> Item)> Requirements { get; } = [];

    public List<(string Id, Installed<IRecordCheck> Item)> Checks { get; } = [];

    /// <summary>What a plugin of a file offers.</summary>
    public static Registry Of(IPlugin plugin, PluginIdentity identity, string file, PluginCalls calls)
    {
        var registry = new Registry(identity, KeyOf(plugin), $"{identity.Id} {identity.Version} ({file})", new(calls, identity.Id));
        plugin.Register(registry);
        return registry;
    }

    /// <summary>What an object that is compiled in offers.</summary>
    public static Registry Of(object item, PluginIdentity identity) => new(identity, KeyOf(item), $"{identity.Id} {identity.Version}", null);

    public IPluginRegistry Add(ICriterion criterion)
    {
        var item = watched?.Of(criterion) ?? criterion;
        Criteria.Add((item.Info.Id, new(item, plugin)));
        return this;
    }

    public IPluginRegistry Add(IRequirementSet requirements)
    {
        var item = watched?.Of(requirements) ?? requirements;
        Requirements.Add((item.Info.Id, new(item, plugin)));
        return this;
    }

    public IPluginRegistry Add(IRecordCheck check)
    {
        var item = watched?.Of(check) ?? check;
        Checks.Add((item.Id, new(item, plugin)));
        return this;
    }

    // Two builds of one plugin are not the same plugin.
    static string KeyOf(object item) => $"{item.GetType().AssemblyQualifiedName} {item.GetType().Module.ModuleVersionId}";
}

/// <summary>An id that something else has.</summary>
sealed class IdTakenException(string id, string second, string first) : ArgumentException($"The id '{id}' of {second} is taken by {first}.");

/// <summary>Something offered that cannot be used.</summary>
sealed class UnusableOfferException(string message) : Exception(message);
