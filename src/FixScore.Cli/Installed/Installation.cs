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

    public static Installation Of(string[] folders, string[] plugins)
    {
        var builder = BuiltInPlugins;
        foreach (var file in plugins) builder.AddFile(file);
        return new(builder.Build(), folders.Length == 0 ? BuiltIn : folders.Select(Folder).Aggregate((first, next) => first.With(next)).With(BuiltIn));
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
