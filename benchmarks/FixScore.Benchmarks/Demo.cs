using System.Reflection;
using FixScore.Criteria.Adhesives;
using FixScore.Criteria.Documentation;
using FixScore.Criteria.Fasteners;
using FixScore.Criteria.Modularity;
using FixScore.Criteria.Pairing;

namespace FixScore.Benchmarks;

/// <summary>The demo records and the profiles of this repository.</summary>
static class Demo
{
    public static Catalogue Catalogue { get; } = Catalogue.Of(
        new FastenersPlugin(), new AdhesivesPlugin(), new ModularityPlugin(), new PairingPlugin(), new DocumentationPlugin());

    static ProfileLibrary Library { get; } = ProfileLibrary.Of(Names("profiles/").Select(name => (name, (ReadOnlyMemory<byte>)Bytes(name))));

    public static byte[][] Records { get; } = [.. Names("records/").Select(Bytes)];

    public static Profile Profile(string id) => ProfileFile.Read(Library.Find(id)!.Text, Catalogue, Library).OrThrow();

    static IEnumerable<string> Names(string prefix) => Assembly.GetExecutingAssembly().GetManifestResourceNames()
        .Where(name => name.StartsWith(prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    static byte[] Bytes(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
