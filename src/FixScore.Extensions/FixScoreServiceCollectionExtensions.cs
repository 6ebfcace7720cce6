using FixScore;
using FixScore.Settings;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace Microsoft.Extensions.DependencyInjection;

/// <summary>Registers FixScore. Every call may be repeated; what was registered before stays once.</summary>
/// <remarks>Like the service collection itself, not thread safe. What is registered is.</remarks>
public static class FixScoreServiceCollectionExtensions
{
    /// <summary>
    /// Registers the singletons <see cref="ScoringDesk"/>, <see cref="Catalogue"/>, <see cref="ProfileLibrary"/> and
    /// <see cref="FixScoreSettings"/>. Several calls add up: folders and plugin files are joined, the last default profile holds.
    /// </summary>
    /// <param name="services">Where to register.</param>
    /// <param name="settings">
    /// A configuration with a section <c>FixScore</c>, or that section: <c>profileFolders</c> is a list of paths,
    /// <c>plugins</c> one of <c>{"file", "sha256", "dependencies": {file name: sha256}}</c>, <c>defaultProfile</c> is <c>ID</c> or
    /// <c>ID@VERSION</c>. A plugin that is stated as a path alone is not pinned. Read once, now. <c>null</c> for none.
    /// </param>
    /// <param name="setup">The same in code, and the folder that relative paths start from.</param>
    /// <remarks>
    /// Wrong settings do not throw here. The first of the singletons that is asked for throws <see cref="InvalidSettingsException"/> with all problems.
    /// </remarks>
    public static IServiceCollection AddFixScore(
        this IServiceCollection services, IConfiguration? settings = null, Action<FixScoreSetup>? setup = null)
    {
        ArgumentNullException.ThrowIfNull(services);
        var chosen = FixScoreSetup.Of(setup, Directory.GetCurrentDirectory());
        return services.Register(SettingsReader.Read(settings, chosen.BaseFolder), chosen);
    }

    /// <summary>The same with settings from a JSON file. Relative paths in it start from its own folder unless <paramref name="setup"/> says otherwise.</summary>
    /// <param name="services">Where to register.</param>
    /// <param name="file">The file; it holds an object with a member <c>FixScore</c>.</param>
    /// <param name="setup">More settings in code.</param>
    public static IServiceCollection AddFixScoreFromFile(
        this IServiceCollection services, string file, Action<FixScoreSetup>? setup = null)
    {
        ArgumentNullException.ThrowIfNull(services);
        var full = Path.GetFullPath(file);
        var chosen = FixScoreSetup.Of(setup, Path.GetDirectoryName(full)!);
        return services.Register(SettingsReader.ReadFile(full, chosen.BaseFolder), chosen);
    }

    /// <summary>Registers a plugin that is compiled in. The container makes it, so it may ask for services.</summary>
    /// <typeparam name="TPlugin">The plugin.</typeparam>
    /// <param name="services">Where to register.</param>
    public static IServiceCollection AddFixScorePlugin<TPlugin>(this IServiceCollection services) where TPlugin : class, IPlugin =>
        services.AddDirectly(ServiceDescriptor.Singleton<IPlugin, TPlugin>());

    /// <summary>Registers a criterion without a plugin; score documents name its assembly. The container makes it.</summary>
    /// <typeparam name="TCriterion">The criterion; one instance judges all records.</typeparam>
    /// <param name="services">Where to register.</param>
    public static IServiceCollection AddFixScoreCriterion<TCriterion>(this IServiceCollection services) where TCriterion : class, ICriterion =>
        services.AddDirectly(ServiceDescriptor.Singleton<ICriterion, TCriterion>());

    /// <summary>Registers a set of requirements without a plugin, as for criteria.</summary>
    /// <typeparam name="TRequirements">The set of requirements.</typeparam>
    /// <param name="services">Where to register.</param>
    public static IServiceCollection AddFixScoreRequirements<TRequirements>(this IServiceCollection services) where TRequirements : class, IRequirementSet =>
        services.AddDirectly(ServiceDescriptor.Singleton<IRequirementSet, TRequirements>());

    /// <summary>Registers a check of records without a plugin, as for criteria.</summary>
    /// <typeparam name="TCheck">The check.</typeparam>
    /// <param name="services">Where to register.</param>
    public static IServiceCollection AddFixScoreRecordCheck<TCheck>(this IServiceCollection services) where TCheck : class, IRecordCheck =>
        services.AddDirectly(ServiceDescriptor.Singleton<IRecordCheck, TCheck>());

    static IServiceCollection AddDirectly(this IServiceCollection services, ServiceDescriptor item)
    {
        services.AddFixScore().TryAddEnumerable(item);
        return services;
    }

    static IServiceCollection Register(this IServiceCollection services, StatedSettings read, FixScoreSetup chosen)
    {
        services.Stated().AddRange([read, chosen.Stated()]);
        services.TryAddSingleton(provider => Installation.Of(StatedSettings.Joined(services.Stated()), provider));
        services.TryAddSingleton(provider => provider.GetRequiredService<Installation>().Settings);
        services.TryAddSingleton(provider => provider.GetRequiredService<Installation>().Catalogue);
        services.TryAddSingleton(provider => provider.GetRequiredService<Installation>().Library);
        services.TryAddSingleton<ScoringDesk>();
        return services;
    }

    // What all calls stated is kept in the collection itself: a static would be shared by unrelated programs in one process.
    static List<StatedSettings> Stated(this IServiceCollection services)
    {
        var kept = services.Select(service => service.IsKeyedService ? null : service.ImplementationInstance).OfType<List<StatedSettings>>().FirstOrDefault();
        if (kept is null) services.AddSingleton(kept = []);
        return kept;
    }
}
