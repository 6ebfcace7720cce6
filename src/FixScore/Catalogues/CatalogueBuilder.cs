using System.Reflection;

namespace FixScore;

/// <summary>Collects plugins into a <see cref="Catalogue"/>. Not thread safe. The order of plugins never matters.</summary>
public sealed class CatalogueBuilder
{
    readonly HashSet<string> added = new(StringComparer.Ordinal);
    readonly Dictionary<object, string> from = new(ReferenceEqualityComparer.Instance);

    internal Dictionary<string, Installed<ICriterion>> Criteria { get; } = new(StringComparer.Ordinal);

    internal Dictionary<string, Installed<IRequirementSet>> Requirements { get; } = new(StringComparer.Ordinal);

    internal Dictionary<string, Installed<IRecordCheck>> Checks { get; } = new(StringComparer.Ordinal);

    /// <summary>Adds what a plugin offers. All of it or nothing. A plugin of a type and build that was added before is left out, so that repeats are harmless.</summary>
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

    /// <summary>Installs what a plugin offers: all of it, or nothing when an id is taken.</summary>
    internal CatalogueBuilder Install(Registry offered)
    {
        if (added.Contains(offered.Key)) return this;
        Check(Criteria, offered.Criteria, offered);
        Check(Requirements, offered.Requirements, offered);
        Check(Checks, offered.Checks, offered);
        Put(Criteria, offered.Criteria, offered);
        Put(Requirements, offered.Requirements, offered);
        Put(Checks, offered.Checks, offered);
        added.Add(offered.Key);
        return this;
    }

    CatalogueBuilder Add(object item, Action<IPluginRegistry> register, string? digest = null)
    {
        var registry = Registry.Of(item, Identify(item.GetType().Assembly, digest));
        if (added.Contains(registry.Key)) return this;
        register(registry);
        return Install(registry);
    }

    void Check<T>(Dictionary<string, Installed<T>> to, List<(string Id, Installed<T> Item)> offered, Registry by) where T : class
    {
        var own = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (id, _) in offered)
        {
            if (to.TryGetValue(id, out var first)) throw new IdTakenException(id, by.From, from[first.Item]);
            if (!own.Add(id)) throw new IdTakenException(id, by.From, "another offer of the same plugin");
        }
    }

    void Put<T>(Dictionary<string, Installed<T>> to, List<(string Id, Installed<T> Item)> offered, Registry by) where T : class
    {
        foreach (var (id, item) in offered)
        {
            to.Add(id, item);
            from[item.Item] = by.From;
        }
    }

    internal static PluginIdentity Identify(Assembly assembly, string? digest = null) =>
        new(assembly.GetName().Name!, VersionOf(assembly), digest);

    internal static string VersionOf(Assembly assembly)
    {
        var version = assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion
            ?? assembly.GetName().Version?.ToString() ?? "0.0.0";
        return version.Split('+')[0];
    }
}
