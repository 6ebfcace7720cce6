using System.Reflection;
using FixScore.Cli.Files;
using FixScore.Criteria.Adhesives;
using FixScore.Criteria.Documentation;
using FixScore.Criteria.Fasteners;
using FixScore.Criteria.Modularity;
using FixScore.Criteria.Pairing;

namespace FixScore.Cli.Installed;

/// <summary>The criteria and profiles at hand: built in, and from what the command line names.</summary>
sealed record Installation(Catalogue Catalogue, ProfileLibrary Library)
{
    public static Installation Of(string[] folders, string[] plugins)
    {
        var builder = new CatalogueBuilder()
            .Add(new FastenersPlugin()).Add(new AdhesivesPlugin()).Add(new ModularityPlugin()).Add(new PairingPlugin()).Add(new DocumentationPlugin());
        foreach (var file in plugins) builder.AddFile(file);
        return new(builder.Build(), Folders(folders).With(BuiltIn));
    }

    static ProfileLibrary BuiltIn => ProfileLibrary.Of(Resources.Names("profiles/").Select(name => ("built in", (ReadOnlyMemory<byte>)Resources.Bytes(name))));

    static ProfileLibrary Folders(string[] folders)
    {
        try
        {
            return ProfileLibrary.OfFolders(folders);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new InputException(string.Join(", ", folders), "input-unreadable", "a folder of profiles cannot be read", "Check the name and your rights.");
        }
    }
}

/// <summary>Files embedded in the program.</summary>
static class Resources
{
    static readonly Assembly Own = typeof(Resources).Assembly;

    public static IEnumerable<string> Names(string folder) =>
        Own.GetManifestResourceNames().Where(name => name.StartsWith(folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    public static byte[] Bytes(string name)
    {
        using var stream = Own.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
