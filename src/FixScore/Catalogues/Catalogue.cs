using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace FixScore;

/// <summary>What is installed: criteria, requirement sets and record checks, each with the plugin it came from.</summary>
/// <remarks>Immutable and thread safe. Everything is listed by id, so that the order of registration never shows.</remarks>
public sealed class Catalogue
{
    readonly ImmutableSortedDictionary<string, Installed<ICriterion>> criteria;

    internal Catalogue(CatalogueBuilder builder)
    {
        criteria = builder.Criteria.ToImmutableSortedDictionary(StringComparer.Ordinal);
        Requirements = [.. builder.Requirements.OrderBy(entry => entry.Key, StringComparer.Ordinal).Select(entry => entry.Value)];
        Checks = [.. builder.Checks.OrderBy(entry => entry.Key, StringComparer.Ordinal).Select(entry => entry.Value)];
    }

    /// <summary>Nothing installed.</summary>
    public static Catalogue Empty { get; } = new CatalogueBuilder().Build();

    /// <summary>All criteria, ordered by id.</summary>
    public IEnumerable<Installed<ICriterion>> Criteria => criteria.Values;

    /// <summary>All requirement sets, ordered by id.</summary>
    public ImmutableArray<Installed<IRequirementSet>> Requirements { get; }

    /// <summary>All record checks, ordered by id.</summary>
    public ImmutableArray<Installed<IRecordCheck>> Checks { get; }

    /// <summary>A catalogue of plugins that are compiled in.</summary>
    /// <exception cref="ArgumentException">Two plugins offer the same id.</exception>
    public static Catalogue Of(params IEnumerable<IPlugin> plugins)
    {
        var builder = new CatalogueBuilder();
        foreach (var plugin in plugins) builder.Add(plugin);
        return builder.Build();
    }

    /// <summary>Finds a criterion by id.</summary>
    public bool TryGetCriterion(string id, [MaybeNullWhen(false)] out Installed<ICriterion> criterion) =>
        criteria.TryGetValue(id, out criterion);
}

/// <summary>Something installed and the plugin it came from.</summary>
/// <typeparam name="T">What kind of thing it is.</typeparam>
/// <param name="Item">The thing.</param>
/// <param name="Plugin">The plugin.</param>
public sealed record Installed<T>(T Item, PluginIdentity Plugin);

/// <summary>A plugin as score documents name it.</summary>
/// <param name="Id">Name of its assembly.</param>
/// <param name="Version">Its version, without build metadata.</param>
/// <param name="Digest">SHA-256 of the file it was loaded from; <c>null</c> when compiled in.</param>
public sealed record PluginIdentity(string Id, string Version, string? Digest = null)
{
    /// <summary>The assemblies beside the file that were loaded with it, by file name; empty when compiled in or when it brings none.</summary>
    public ImmutableArray<PluginDependency> Dependencies { get; init; } = [];
}

/// <summary>An assembly that a plugin brings along.</summary>
/// <param name="File">Name of its file, without folders.</param>
/// <param name="Digest">SHA-256 of the file.</param>
public sealed record PluginDependency(string File, string Digest);
