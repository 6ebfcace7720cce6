using System.Reflection;

namespace FixScore;

/// <summary>Collects plugins into a <see cref="Catalogue"/>. Not thread safe. The order of plugins never matters.</summary>
public sealed class CatalogueBuilder
{
    readonly HashSet<string> added = new(StringComparer.Ordinal);

    internal Dictionary<string, Installed<ICriterion>> Criteria { get; } = new(StringComparer.Ordinal);

    internal Dictionary<string, Installed<IRequirementSet>> Requirements { get; } = new(StringComparer.Ordinal);

    internal Dictionary<string, Installed<IRecordCheck>> Checks { get; } = new(StringComparer.Ordinal);

    /// <summary>Adds what a plugin offers. A plugin of a type that was added before is left out, so that repeats are harmless.</summary>
    /// <param name="plugin">The plugin.</param>
    /// <param name="digest">SHA-256 of the file it was loaded from; <c>null</c> when compiled in.</param>
    /// <exception cref="ArgumentException">An id is taken by another plugin.</exception>
    public CatalogueBuilder Add(IPlugin plugin, string? digest = null) => Add(plugin, plugin.Register, digest);

    /// <summary>Adds a criterion without a plugin; score documents name its assembly. One of a type that was added before is left out.</summary>
    /// <exception cref="ArgumentException">Its id is taken.</exception>
    public CatalogueBuilder Add(ICriterion criterion) => Add(criterion, registry => registry.Add(criterion));

    /// <summary>Adds a set of requirements without a plugin, as for criteria.</summary>
    /// <exception cref="ArgumentException">Its id is taken.</exception>
    public CatalogueBuilder Add(IRequirementSet requirements) => Add(requirements, registry => registry.Add(requirements));

    /// <summary>Adds a record check without a plugin, as for criteria.</summary>
    /// <exception cref="ArgumentException">Its id is taken.</exception>
    public CatalogueBuilder Add(IRecordCheck check) => Add(check, registry => registry.Add(check));

    /// <summary>Freezes what was added.</summary>
    public Catalogue Build() => new(this);

    CatalogueBuilder Add(object item, Action<IPluginRegistry> register, string? digest = null)
    {
        var type = item.GetType();
        if (added.Add(type.AssemblyQualifiedName ?? type.FullName!)) register(new Registry(this, Identify(type.Assembly, digest)));
        return this;
    }

    internal static PluginIdentity Identify(Assembly assembly, string? digest = null) =>
        new(assembly.GetName().Name!, VersionOf(assembly), digest);

    internal static string VersionOf(Assembly assembly)
    {
        var version = assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion
            ?? assembly.GetName().Version?.ToString() ?? "0.0.0";
        return version.Split('+')[0];
    }

    sealed class Registry(CatalogueBuilder builder, PluginIdentity plugin) : IPluginRegistry
    {
        public IPluginRegistry Add(ICriterion criterion) => Put(builder.Criteria, criterion.Info.Id, criterion);

        public IPluginRegistry Add(IRequirementSet requirements) => Put(builder.Requirements, requirements.Info.Id, requirements);

        public IPluginRegistry Add(IRecordCheck check) => Put(builder.Checks, check.Id, check);

        Registry Put<T>(Dictionary<string, Installed<T>> to, string id, T item)
        {
            if (to.TryGetValue(id, out var first))
                throw new ArgumentException($"The id '{id}' of {plugin.Id} is taken by {first.Plugin.Id}.");
            to.Add(id, new(item, plugin));
            return this;
        }
    }
}
