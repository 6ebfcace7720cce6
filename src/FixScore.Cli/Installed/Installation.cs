using System.Collections.Immutable;
using FixScore.Cli.Files;
using FixScore.Criteria.Adhesives;
using FixScore.Criteria.Cost;
using FixScore.Criteria.Disassembly;
using FixScore.Criteria.Documentation;
using FixScore.Criteria.Fasteners;
using FixScore.Criteria.Locks;
using FixScore.Criteria.Modularity;
using FixScore.Criteria.Pairing;
using FixScore.Criteria.Safety;
using FixScore.Criteria.Spares;
using FixScore.Criteria.Support;
using FixScore.Criteria.Time;
using FixScore.Requirements.Batteries;
using FixScore.Requirements.Ecodesign;
using FixScore.Requirements.PairingLaws;

namespace FixScore.Cli.Installed;

/// <summary>The criteria, requirement sets and profiles at hand: built in, and from what the command line names.</summary>
sealed record Installation(Catalogue Catalogue, ProfileLibrary Library)
{
    const string ProfileFolder = "profiles/";

    /// <summary>Names of the built-in profiles' files, which are their ids; known without reading them.</summary>
    public static IEnumerable<string> ProfileNames => Resources.Names(ProfileFolder).Select(name => Path.GetFileNameWithoutExtension(name));

    /// <summary>Ids of the built-in sets of requirements.</summary>
    public static IEnumerable<string> RequirementSetIds => BuiltInPlugins.Build().Requirements.Select(set => set.Item.Info.Id);

    static CatalogueBuilder BuiltInPlugins => new CatalogueBuilder()
        .Add(new FastenersPlugin()).Add(new AdhesivesPlugin()).Add(new ModularityPlugin()).Add(new PairingPlugin()).Add(new DocumentationPlugin())
        .Add(new DisassemblyPlugin()).Add(new SparesPlugin()).Add(new SupportPlugin()).Add(new TimePlugin()).Add(new CostPlugin()).Add(new SafetyPlugin()).Add(new LocksPlugin())
       .Add(new PairingLawsPlugin()).Add(new EcodesignPlugin())
        .Add(new BatteriesPlugin());

    public static Installation Of(string[] folders, IEnumerable<PluginRequest> plugins, PluginTerms terms)
    {
        var builder = BuiltInPlugins;
        if (Refused(builder, plugins, terms) is { IsEmpty: false } refused) throw new RefusedPluginsException(refused);
        return new(builder.Build(), folders.Length == 0 ? BuiltIn : folders.Select(Folder).Aggregate((first, next) => first.With(next)).With(BuiltIn));
    }

    static ImmutableArray<PluginFileException> Refused(CatalogueBuilder builder, IEnumerable<PluginRequest> plugins, PluginTerms terms)
    {
        var refused = ImmutableArray.CreateBuilder<PluginFileException>();
        foreach (var plugin in plugins)
        {
            try
            {
                builder.AddFile(plugin, terms);
            }
            catch (PluginFileException failure)
            {
                refused.Add(failure);
            }
        }
        return refused.DrainToImmutable();
    }

    static ProfileLibrary BuiltIn => ProfileLibrary.Of(Resources.Names(ProfileFolder).Select(name => ("built in", (ReadOnlyMemory<byte>)Resources.Bytes(name))));

    static ProfileLibrary Folder(string folder)
    {
        try
        {
            return ProfileLibrary.OfFolders(folder);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new InputException(folder, "input-unreadable",
                Directory.Exists(folder) ? "a profile in this folder cannot be read" : "there is no such folder", "Check the name and your rights.");
        }
    }
}
